package org.cotyla.cli.text;

import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import org.cotyla.audit.AuditLine;
import org.cotyla.audit.AuditTables;
import org.cotyla.audit.Proportion;
import org.cotyla.audit.SideBySide;
import org.cotyla.audit.Verdict;
import org.cotyla.protocol.Ranking;
import org.cotyla.retrospective.DraftChanges;
import org.cotyla.retrospective.DraftChanges.Kind;
import org.cotyla.retrospective.RetrospectiveReport;

/** What another protocol, most often a draft, judges otherwise in the same cases, as text. */
final class OtherProtocolLines {

  private static final int MOST_LINES = 12;

  private final Page page;

  OtherProtocolLines(Page page) {
    this.page = page;
  }

  void write(RetrospectiveReport report, RetrospectiveReport.Comparison other) {
    if (report.isSameAs(other)) {
      page.warning(RetrospectiveReport.THE_SAME);
    }
    page.heading("Side by side: what was done, by this protocol and by the other");
    SideBySide.of(report.audit(), other.audit()).stream()
        .filter(line -> line.by().isEmpty())
        .forEach(this::sideBySide);
    page.heading("What the other protocol judges otherwise");
    DraftChanges changes = other.changes();
    for (Ranking ranking : report.protocol().rankings()) {
      ranking(changes, ranking.name());
    }
    SortedMap<String, Long> refused = changes.values(Kind.REFUSED, "");
    if (!refused.isEmpty()) {
      page.warning("the other protocol refuses some cases that this one judges");
      most("refused", refused);
    }
    if (!other.unknown().isEmpty()) {
      page.warning("it does not ask for, so was not told: " + String.join(", ", other.unknown()));
    }
    if (!changes.examples().isEmpty()) {
      page.paragraph(2, "The first of them:");
    }
    for (DraftChanges.Example one : changes.examples()) {
      page.marked(4, Mark.ITEM, one.reference() + " (row " + one.row() + "): " + one.change());
    }
  }

  private void sideBySide(SideBySide line) {
    page.paragraph(2, AuditTables.rankingName(line.ranking()));
    both("first", line.one().map(AuditLine::first), line.other().map(AuditLine::first));
    both(
        "first or acceptable",
        line.one().map(AuditLine::acceptable),
        line.other().map(AuditLine::acceptable));
    both("ruled out", line.one().map(AuditLine::ruledOut), line.other().map(AuditLine::ruledOut));
  }

  private void both(String label, Optional<Proportion> one, Optional<Proportion> other) {
    LabelledLine.write(
        page,
        4,
        label,
        one.map(Figures::of).orElse("not judged")
            + "; by the other "
            + other.map(Figures::of).orElse("not judged"));
  }

  private void ranking(DraftChanges changes, String name) {
    long compared = changes.count(Kind.COMPARED, name);
    if (compared == 0) {
      return;
    }
    page.paragraph(2, name + ", " + number(compared) + " judged by both:");
    item("another first: " + share(changes.count(Kind.FIRST, name), compared));
    item("judged otherwise: " + share(changes.count(Kind.VERDICT, name), compared));
    item(
        "newly ruled out: "
            + number(changes.verdicts(name, Verdict.RULED_OUT, true))
            + "; no longer ruled out: "
            + number(changes.verdicts(name, Verdict.RULED_OUT, false)));
    most("another first, from and to", changes.values(Kind.FIRST, name));
    most("by the rows", changes.values(Kind.ROW, name));
  }

  private void item(String words) {
    page.marked(4, Mark.ITEM, words);
  }

  private void most(String what, SortedMap<String, Long> values) {
    if (values.isEmpty()) {
      return;
    }
    page.paragraph(4, what + ":");
    values.entrySet().stream()
        .sorted(
            Map.Entry.<String, Long>comparingByValue(Comparator.reverseOrder())
                .thenComparing(Map.Entry.comparingByKey()))
        .limit(MOST_LINES)
        .forEach(one -> page.marked(6, Mark.ITEM, one.getKey() + ": " + number(one.getValue())));
    if (values.size() > MOST_LINES) {
      page.paragraph(6, "and " + (values.size() - MOST_LINES) + " more, in the other formats");
    }
  }

  private static String share(long part, long whole) {
    return number(part) + " (" + Figures.percent((double) part / whole) + ")";
  }

  private static String number(long number) {
    return String.format(Locale.ROOT, "%,d", number);
  }
}
