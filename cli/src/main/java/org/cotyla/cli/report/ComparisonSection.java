package org.cotyla.cli.report;

import static org.cotyla.cli.report.AuditSheet.capital;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Collectors;
import org.cotyla.audit.AuditLine;
import org.cotyla.audit.AuditTables;
import org.cotyla.audit.AuditTotals;
import org.cotyla.audit.Dimension;
import org.cotyla.audit.Proportion;
import org.cotyla.audit.SideBySide;
import org.cotyla.cli.text.Figures;
import org.cotyla.protocol.Ranking;
import org.cotyla.retrospective.DraftChanges;
import org.cotyla.retrospective.DraftChanges.Kind;
import org.cotyla.retrospective.RetrospectiveReport;

/** The same cases by two protocols: both columns side by side, and what is judged otherwise. */
final class ComparisonSection {

  private static final int MOST_LINES = 15;

  private final AuditSheet sheet;
  private final RetrospectiveReport report;
  private final RetrospectiveReport.Comparison other;

  ComparisonSection(
      AuditSheet sheet, RetrospectiveReport report, RetrospectiveReport.Comparison other) {
    this.sheet = sheet;
    this.report = report;
    this.other = other;
  }

  void write() {
    sheet.heading("The two protocols side by side");
    sheet.note(
        "Of the same cases, how many chose what each protocol puts first, and how many what it"
            + " rules out. A class or group is that which each protocol finds.");
    List<SideBySide> lines = SideBySide.of(report.audit(), other.audit());
    table("Over all", lines.stream().filter(line -> line.by().isEmpty()).toList());
    otherwise();
    List<SideBySide> apart = apart(lines);
    if (!apart.isEmpty()) {
      sheet.heading("Groups that the two judge apart");
      sheet.note("Only those; the workbook has every line, and the months.");
      apart.stream()
          .map(SideBySide::by)
          .distinct()
          .forEach(
              by ->
                  apart.stream()
                      .filter(line -> line.by().equals(by))
                      .map(SideBySide::ranking)
                      .distinct()
                      .forEach(ranking -> group(apart, by, ranking)));
    }
  }

  /** What every ranking has is shown of the decision as a whole. */
  private static List<SideBySide> apart(List<SideBySide> lines) {
    Set<String> ofTheWhole =
        lines.stream()
            .filter(line -> line.ranking().equals(AuditTotals.WHOLE))
            .map(SideBySide::by)
            .collect(Collectors.toSet());
    return lines.stream()
        .filter(line -> !line.by().isEmpty() && !line.by().equals(Dimension.MONTH.word()))
        .filter(line -> line.ranking().equals(AuditTotals.WHOLE) || !ofTheWhole.contains(line.by()))
        .filter(line -> !line.isAlike())
        .toList();
  }

  private void group(List<SideBySide> apart, String by, String ranking) {
    table(
        "By " + by + ", " + AuditTables.rankingName(ranking),
        apart.stream()
            .filter(line -> line.by().equals(by) && line.ranking().equals(ranking))
            .toList());
  }

  private void table(String caption, List<SideBySide> lines) {
    HtmlTable table =
        sheet.table(
            caption,
            lines.get(0).by().isEmpty() ? "decision" : lines.get(0).by(),
            "first, by this protocol",
            "first, by the other",
            "ruled out, by this",
            "ruled out, by the other");
    for (SideBySide line : lines) {
      table.row(
          line.by().isEmpty() ? AuditTables.rankingName(line.ranking()) : line.value(),
          of(line.one(), true),
          of(line.other(), true),
          of(line.one(), false),
          of(line.other(), false));
    }
    table.end();
  }

  private static String of(Optional<AuditLine> line, boolean first) {
    Optional<Proportion> share = line.map(one -> first ? one.first() : one.ruledOut());
    return share.map(Figures::of).orElse("no such line");
  }

  private void otherwise() {
    DraftChanges changes = other.changes();
    sheet.heading("What the other protocol judges otherwise");
    if (!other.unknown().isEmpty()) {
      sheet.note("It does not ask for, so was not told: " + String.join(", ", other.unknown()));
    }
    for (Ranking ranking : report.protocol().rankings()) {
      String name = ranking.name();
      sheet.markup().leaf("h3", capital(name));
      sheet.note(
          changes.count(Kind.COMPARED, name)
              + " judged by both: another first in "
              + changes.count(Kind.FIRST, name)
              + ", what was done judged otherwise in "
              + changes.count(Kind.VERDICT, name)
              + ".");
      for (Kind kind : List.of(Kind.FIRST, Kind.VERDICT, Kind.ROW)) {
        most(kind, changes.values(kind, name));
      }
    }
    most(Kind.REFUSED, changes.values(Kind.REFUSED, ""));
    examples(changes);
  }

  private void most(Kind kind, SortedMap<String, Long> values) {
    if (values.isEmpty()) {
      return;
    }
    HtmlTable table = sheet.table(capital(kind.words()), "what", "cases");
    values.entrySet().stream()
        .sorted(Map.Entry.<String, Long>comparingByValue().reversed())
        .limit(MOST_LINES)
        .forEach(one -> table.row(one.getKey(), Long.toString(one.getValue())));
    table.end();
    if (values.size() > MOST_LINES) {
      sheet.note("and " + (values.size() - MOST_LINES) + " more, in the workbook");
    }
  }

  private void examples(DraftChanges changes) {
    if (changes.examples().isEmpty()) {
      sheet.none("No case is judged otherwise.");
      return;
    }
    HtmlTable table = sheet.table("The first of them", "case", "row", "ranking", "what");
    for (DraftChanges.Example one : changes.examples()) {
      table.row(one.reference(), Long.toString(one.row()), one.ranking(), one.change());
    }
    table.end();
  }
}
