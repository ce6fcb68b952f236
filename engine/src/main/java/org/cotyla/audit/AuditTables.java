package org.cotyla.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.cotyla.audit.AuditTable.Cell;
import org.cotyla.audit.AuditTable.Number;
import org.cotyla.audit.AuditTable.Share;
import org.cotyla.audit.AuditTable.Words;

/** The tables of a report: everything in it, for workbooks and for whoever counts on. */
public final class AuditTables {

  /** The times at which numbers at risk are told, in days: start, 3 months, then years. */
  public static final List<Long> TIMES = List.of(0L, 91L, 365L, 730L, 1826L, 3652L);

  private static final List<String> SHARES =
      List.of(
          "decisions",
          "judged",
          "first",
          "first share",
          "first lower 95 %",
          "first upper 95 %",
          "acceptable",
          "acceptable share",
          "acceptable lower 95 %",
          "acceptable upper 95 %",
          "ruled out",
          "ruled out share",
          "ruled out lower 95 %",
          "ruled out upper 95 %",
          "not ranked",
          "not judged");

  /** The headings of a list of decisions against a rule-out. */
  public static final List<String> AGAINST_RULE_OUTS =
      List.of(
          "case",
          "written as",
          "day",
          "role",
          "ranking",
          "chosen",
          "stood first",
          "ruled out by",
          "reason",
          "in own words");

  private AuditTables() {}

  /** The tables of decisions with what came of them. */
  public static List<AuditTable> of(AuditReport report) {
    List<AuditTable> tables = new ArrayList<>(ofDecisions(report));
    tables.add(outcomes(report));
    tables.add(curves(report));
    return tables;
  }

  /** The tables of decisions of which nobody wrote down what came of them. */
  public static List<AuditTable> ofDecisions(AuditReport report) {
    return List.of(
        summary(report),
        concordance(report),
        months(report),
        breakdowns(report),
        rows(report),
        reasons(report),
        missing(report),
        named(report),
        againstRuleOuts(report));
  }

  /** What a ranking is called in a table. */
  public static String rankingName(String ranking) {
    return ranking.equals(AuditTotals.WHOLE) ? "whole decision" : ranking;
  }

  private static AuditTable summary(AuditReport report) {
    List<List<Cell>> rows = new ArrayList<>();
    AuditSource source = report.source();
    rows.add(fact("audit of", source.title()));
    rows.add(fact("from", source.from().map(Object::toString).orElse("the start")));
    rows.add(fact("to", source.to().map(Object::toString).orElse("the end")));
    source.identity().forEach(fact -> rows.add(fact(fact.name(), fact.value())));
    rows.add(List.of(new Words("decisions"), new Number(report.decisions())));
    rows.add(fact("caution", AuditReport.CAUTION));
    rows.add(fact("mind", AuditReport.SMALL_NUMBERS));
    if (!report.outcomes().isEmpty()) {
      rows.add(fact("outcomes", AuditReport.OUTCOMES));
    }
    return new AuditTable("Summary", List.of("what", "value"), rows);
  }

  private static List<Cell> fact(String name, String value) {
    return List.of(new Words(name), new Words(value));
  }

  private static AuditTable concordance(AuditReport report) {
    List<List<Cell>> rows = new ArrayList<>();
    for (RankingAudit part : report.parts()) {
      rows.add(line(List.of(rankingName(part.ranking())), part.all()));
    }
    return new AuditTable("Concordance", headings("ranking"), rows);
  }

  private static AuditTable breakdowns(AuditReport report) {
    List<List<Cell>> rows = new ArrayList<>();
    for (RankingAudit part : report.parts()) {
      for (Breakdown breakdown : part.breakdowns()) {
        for (AuditLine line : breakdown.lines()) {
          rows.add(line(List.of(rankingName(part.ranking()), name(breakdown), line.value()), line));
        }
      }
    }
    return new AuditTable("Breakdowns", headings("ranking", "by", "value"), rows);
  }

  /** What a breakdown is by, in words. */
  public static String name(Breakdown breakdown) {
    return breakdown.by() == Dimension.GROUP ? breakdown.name() : breakdown.by().word();
  }

  private static List<String> headings(String... first) {
    List<String> all = new ArrayList<>(List.of(first));
    all.addAll(SHARES);
    return all;
  }

  private static List<Cell> line(List<String> names, AuditLine line) {
    List<Cell> cells = new ArrayList<>();
    names.forEach(name -> cells.add(new Words(name)));
    cells.add(new Number(line.tally().all()));
    cells.add(new Number(line.tally().judged()));
    cells.addAll(proportion(line.first()));
    cells.addAll(proportion(line.acceptable()));
    cells.addAll(proportion(line.ruledOut()));
    cells.add(new Number(line.tally().notRanked()));
    cells.add(new Number(line.tally().unjudged()));
    return cells;
  }

  private static List<Cell> proportion(Proportion proportion) {
    Cell none = new Words("");
    boolean some = proportion.share().isPresent();
    return List.of(
        new Number(proportion.count()),
        some ? new Share(proportion.share().getAsDouble()) : none,
        some ? new Share(proportion.lower()) : none,
        some ? new Share(proportion.upper()) : none);
  }

  private static AuditTable months(AuditReport report) {
    List<List<Cell>> rows = new ArrayList<>();
    for (RankingAudit part : report.parts()) {
      for (ControlChart.Point point : part.byMonth().points()) {
        rows.add(
            List.of(
                new Words(rankingName(part.ranking())),
                new Words(point.name()),
                new Number(point.of()),
                new Number(point.count()),
                new Share(point.share()),
                new Share(part.byMonth().centre()),
                new Share(point.lower()),
                new Share(point.upper()),
                new Words(point.isBeyond() ? "beyond" : "within"),
                new Words(point.rough() ? "few, limits rough" : "")));
      }
    }
    return new AuditTable(
        "Control chart",
        List.of(
            "ranking",
            "month",
            "judged",
            "first",
            "first share",
            "centre line",
            "lower control limit",
            "upper control limit",
            "limits",
            "remark"),
        rows);
  }

  private static AuditTable rows(AuditReport report) {
    List<List<Cell>> rows = new ArrayList<>();
    for (RankingAudit part : report.rankings()) {
      for (RowDepartures row : part.rows()) {
        List<Cell> cells = new ArrayList<>(List.of(new Words(row.ranking()), new Words(row.row())));
        cells.add(new Number(row.departed().of()));
        cells.addAll(proportion(row.departed()));
        cells.add(new Words(reasons(row)));
        rows.add(cells);
      }
    }
    return new AuditTable(
        "Rows departed from",
        List.of(
            "ranking",
            "row",
            "spoke at",
            "departed",
            "share",
            "lower 95 %",
            "upper 95 %",
            "reasons given"),
        rows);
  }

  /** The reasons of a row in one line. */
  public static String reasons(RowDepartures row) {
    return row.reasons().stream()
        .map(reason -> reason.name() + " " + reason.count())
        .collect(Collectors.joining(", "));
  }

  private static AuditTable reasons(AuditReport report) {
    List<List<Cell>> rows = new ArrayList<>();
    for (RankingAudit part : report.parts()) {
      for (NamedCount reason : part.reasons()) {
        rows.add(
            List.of(
                new Words(rankingName(part.ranking())),
                new Words(reason.name()),
                new Number(reason.count())));
      }
    }
    return new AuditTable("Reasons", List.of("ranking", "reason", "departures"), rows);
  }

  private static AuditTable missing(AuditReport report) {
    return new AuditTable(
        "Missing data",
        List.of("datum", "decisions", "might have changed a first place"),
        report.missing().stream()
            .map(
                datum ->
                    List.<Cell>of(
                        new Words(datum.field()),
                        new Number(datum.decisions()),
                        new Number(datum.mightChangeFirst())))
            .toList());
  }

  private static AuditTable named(AuditReport report) {
    return new AuditTable(
        "To look at",
        List.of("what", "how many", "references"),
        report.named().stream()
            .map(
                named ->
                    List.<Cell>of(
                        new Words(named.what()),
                        new Number(named.count()),
                        new Words(references(named))))
            .toList());
  }

  private static AuditTable againstRuleOuts(AuditReport report) {
    return new AuditTable(
        "Against a rule-out",
        AGAINST_RULE_OUTS,
        report.againstRuleOuts().stream().map(AuditTables::words).toList());
  }

  private static List<Cell> words(AgainstRuleOut one) {
    return againstRuleOut(one).stream().<Cell>map(Words::new).toList();
  }

  /** A decision against a rule-out, under {@link #AGAINST_RULE_OUTS}. */
  public static List<String> againstRuleOut(AgainstRuleOut one) {
    return List.of(
        one.reference(),
        one.place(),
        one.day(),
        one.role(),
        one.ranking(),
        one.chosen(),
        one.first(),
        String.join(", ", one.ruledOutBy()),
        one.reason(),
        one.because());
  }

  /** The references in one line, which says when there are more. */
  public static String references(NamedCases named) {
    long more = named.count() - named.references().size();
    return String.join(", ", named.references()) + (more > 0 ? " and " + more + " more" : "");
  }

  private static AuditTable outcomes(AuditReport report) {
    List<String> headings =
        new ArrayList<>(List.of("outcome", "ranking", "option", "followed", "events"));
    TIMES.forEach(days -> headings.add("at risk at day " + days));
    List<List<Cell>> rows = new ArrayList<>();
    for (OutcomeCurve curve : report.outcomes()) {
      List<Cell> cells = names(curve);
      cells.add(new Number(curve.survival().subjects()));
      cells.add(new Number(curve.survival().events()));
      TIMES.forEach(days -> cells.add(new Number(curve.survival().atRisk(days))));
      rows.add(cells);
    }
    return new AuditTable("Outcomes", headings, rows);
  }

  private static List<Cell> names(OutcomeCurve curve) {
    return new ArrayList<>(
        List.of(new Words(curve.outcome()), new Words(curve.ranking()), new Words(curve.option())));
  }

  private static AuditTable curves(AuditReport report) {
    List<List<Cell>> rows = new ArrayList<>();
    for (OutcomeCurve curve : report.outcomes()) {
      for (Survival.Step step : curve.survival().steps()) {
        List<Cell> cells = names(curve);
        cells.add(new Number(step.days()));
        cells.add(new Number(step.atRisk()));
        cells.add(new Number(step.events()));
        cells.add(new Share(step.free()));
        cells.add(new Share(step.lower()));
        cells.add(new Share(step.upper()));
        rows.add(cells);
      }
    }
    return new AuditTable(
        "Curves",
        List.of(
            "outcome",
            "ranking",
            "option",
            "day",
            "at risk",
            "events",
            "free of it",
            "lower 95 %",
            "upper 95 %"),
        rows);
  }
}
