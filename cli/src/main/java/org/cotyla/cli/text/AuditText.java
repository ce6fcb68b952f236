package org.cotyla.cli.text;

import java.util.List;
import org.cotyla.audit.AgainstRuleOut;
import org.cotyla.audit.AuditLine;
import org.cotyla.audit.AuditReport;
import org.cotyla.audit.AuditSource;
import org.cotyla.audit.AuditTables;
import org.cotyla.audit.AuditTotals;
import org.cotyla.audit.Breakdown;
import org.cotyla.audit.ControlChart;
import org.cotyla.audit.Dimension;
import org.cotyla.audit.MissingDatum;
import org.cotyla.audit.NamedCases;
import org.cotyla.audit.NamedCount;
import org.cotyla.audit.RankingAudit;
import org.cotyla.audit.RowDepartures;

/** An audit as text. */
public final class AuditText {

  private static final int MOST_ROWS = 10;
  private static final int MOST_NAMED = 8;
  private static final int MOST_LISTED = 20;

  private final Page page;

  public AuditText(int width, Style style) {
    this(new Page(width, style));
  }

  AuditText(Page page) {
    this.page = page;
  }

  /** The whole audit. */
  public String write(AuditReport report) {
    page.paragraph(0, AuditReport.CAUTION);
    page.blank();
    opening(report);
    page.blank();
    figures(report);
    new OutcomeLines(page).write(report);
    return page.toString();
  }

  /** What there is to say of any decisions, wherever they were written down. */
  void figures(AuditReport report) {
    page.warning(AuditReport.SMALL_NUMBERS);
    page.heading("Agreement with what was advised (95 % intervals by Wilson)");
    report.parts().forEach(this::concordance);
    page.heading("By month: what stood first was chosen");
    report.parts().forEach(this::months);
    breakdowns(report);
    rows(report);
    reasons(report.whole());
    named(report);
    againstRuleOuts(report);
    missing(report);
  }

  private void opening(AuditReport report) {
    AuditSource source = report.source();
    page.hanging("Audit of   ", source.title());
    page.hanging(
        "Period     ",
        source.from().map(day -> "from " + day).orElse("from the start")
            + source.to().map(day -> " to " + day).orElse(" to the end"));
    for (AuditSource.Fact fact : source.identity()) {
      page.paragraph(2, fact.name() + ":");
      page.paragraph(4, fact.value());
    }
    page.hanging("Decisions  ", Long.toString(report.decisions()));
  }

  private void concordance(RankingAudit part) {
    AuditLine all = part.all();
    page.paragraph(2, name(part.ranking()));
    line(4, "first", Figures.of(all.first()));
    line(4, "first or acceptable", Figures.of(all.acceptable()));
    line(4, "against a rule-out", Figures.of(all.ruledOut()));
    line(4, "not ranked", Long.toString(all.tally().notRanked()));
    if (all.tally().unjudged() > 0) {
      line(4, "nothing was advised", Long.toString(all.tally().unjudged()));
    }
  }

  private static String name(String ranking) {
    return ranking.equals(AuditTotals.WHOLE) ? "whole decision (the worst of its parts)" : ranking;
  }

  private void months(RankingAudit part) {
    ControlChart chart = part.byMonth();
    if (chart.points().isEmpty()) {
      return;
    }
    page.paragraph(
        2,
        name(part.ranking())
            + ": "
            + Figures.percent(chart.centre())
            + " over all; limits of three standard deviations in brackets");
    if (!part.isWhole()) {
      beyond(chart);
      return;
    }
    boolean rough = chart.points().stream().anyMatch(ControlChart.Point::rough);
    chart.points().forEach(this::month);
    if (rough) {
      page.paragraph(4, "* so few that the limits are rough");
    }
  }

  private void month(ControlChart.Point point) {
    line(
        4,
        point.name(),
        point.count()
            + " of "
            + point.of()
            + " = "
            + Figures.percent(point.share())
            + " "
            + Figures.range(point.lower(), point.upper())
            + (point.isBeyond() ? " BEYOND" : "")
            + (point.rough() ? " *" : ""));
  }

  /** Of a single ranking only what asks a question; the rest is in the other formats. */
  private void beyond(ControlChart chart) {
    List<ControlChart.Point> beyond =
        chart.points().stream().filter(ControlChart.Point::isBeyond).toList();
    if (beyond.isEmpty()) {
      page.paragraph(4, "No month is beyond its limits.");
    }
    beyond.forEach(this::month);
  }

  private void breakdowns(AuditReport report) {
    for (Breakdown breakdown : report.whole().breakdowns()) {
      if (breakdown.by() != Dimension.MONTH) {
        page.heading("By " + AuditTables.name(breakdown) + ": what stood first was chosen");
        breakdown.lines().forEach(this::line);
      }
    }
    for (RankingAudit part : report.rankings()) {
      for (Breakdown breakdown : part.breakdowns()) {
        if (breakdown.by() == Dimension.OPTION) {
          page.heading("By " + part.ranking() + " chosen: it stood first");
          options(breakdown);
        } else if (breakdown.by() == Dimension.ADVISED) {
          page.heading("By " + part.ranking() + " that stood first: it was chosen");
          breakdown.lines().forEach(this::line);
        }
      }
    }
  }

  private void options(Breakdown breakdown) {
    List<String> never =
        breakdown.lines().stream()
            .filter(line -> line.tally().all() == 0)
            .map(AuditLine::value)
            .toList();
    breakdown.lines().stream().filter(line -> line.tally().all() > 0).forEach(this::line);
    if (!never.isEmpty()) {
      line(2, "never chosen", String.join(", ", never));
    }
  }

  private void line(AuditLine line) {
    String unjudged =
        line.tally().unjudged() > 0 ? ", " + line.tally().unjudged() + " not judged" : "";
    String against =
        line.ruledOut().count() > 0 ? "; against a rule-out " + line.ruledOut().count() : "";
    line(2, line.value(), Figures.of(line.first()) + against + unjudged);
  }

  private void line(int indent, String label, String words) {
    LabelledLine.write(page, indent, label, words);
  }

  private void rows(AuditReport report) {
    for (RankingAudit part : report.rankings()) {
      List<RowDepartures> rows = part.rows();
      if (!rows.isEmpty()) {
        page.heading("Rows departed from most: " + part.ranking());
        rows.stream().limit(MOST_ROWS).forEach(this::row);
        if (rows.size() > MOST_ROWS) {
          page.paragraph(2, "and " + (rows.size() - MOST_ROWS) + " more, in the other formats");
        }
      }
    }
  }

  private void row(RowDepartures row) {
    line(2, row.row(), Figures.of(row.departed()));
    page.paragraph(LabelledLine.LABEL + 4, AuditTables.reasons(row));
  }

  private void reasons(RankingAudit whole) {
    if (whole.reasons().isEmpty()) {
      return;
    }
    page.heading("Reasons given for departures");
    for (NamedCount reason : whole.reasons()) {
      line(2, reason.name(), Long.toString(reason.count()));
    }
  }

  private void againstRuleOuts(AuditReport report) {
    if (report.againstRuleOuts().isEmpty()) {
      return;
    }
    page.heading("Decided against a rule-out");
    for (AgainstRuleOut one : report.againstRuleOuts().stream().limit(MOST_LISTED).toList()) {
      page.marked(
          2,
          Mark.ITEM,
          one.reference()
              + ", "
              + one.place()
              + (one.day().isEmpty() ? "" : ", " + one.day())
              + ", "
              + one.role()
              + ": "
              + one.chosen()
              + ", ruled out by "
              + String.join(", ", one.ruledOutBy())
              + (one.first().isEmpty() ? "" : "; first stood " + one.first())
              + "; reason: "
              + (one.reason().isEmpty() ? "none given" : one.reason())
              + (one.because().isEmpty() ? "" : ", \"" + one.because() + "\""));
    }
    int more = report.againstRuleOuts().size() - MOST_LISTED;
    if (more > 0) {
      page.paragraph(2, "and more, in the other formats");
    }
  }

  private void named(AuditReport report) {
    if (report.named().isEmpty() && report.source().to().isEmpty()) {
      return;
    }
    page.heading("To look at one by one");
    if (report.named().isEmpty()) {
      page.paragraph(2, "Nothing.");
    }
    for (NamedCases named : report.named()) {
      page.marked(2, Mark.ITEM, named.what() + ": " + named.count());
      List<String> first = named.references().stream().limit(MOST_NAMED).toList();
      long more = named.count() - first.size();
      page.paragraph(4, String.join(", ", first) + (more > 0 ? " and " + more + " more" : ""));
    }
  }

  private void missing(AuditReport report) {
    page.heading("Data missing when it was decided");
    if (report.missing().isEmpty()) {
      page.paragraph(2, "None is recorded.");
    }
    for (MissingDatum datum : report.missing()) {
      line(
          2,
          datum.field(),
          datum.decisions()
              + ", of which "
              + datum.mightChangeFirst()
              + " might have changed a first place");
    }
  }
}
