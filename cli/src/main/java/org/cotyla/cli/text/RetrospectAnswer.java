package org.cotyla.cli.text;

import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import org.cotyla.audit.AuditTotals;
import org.cotyla.audit.Dimension;
import org.cotyla.audit.Tally;
import org.cotyla.audit.Verdict;
import org.cotyla.protocol.About;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.retrospective.Column;
import org.cotyla.retrospective.DraftChanges;
import org.cotyla.retrospective.DraftChanges.Kind;
import org.cotyla.retrospective.RetrospectiveReport;

/** What past cases come to when a protocol judges them, as text. */
public final class RetrospectAnswer {

  private static final int MOST_LINES = 12;

  private final Page page;

  public RetrospectAnswer(int width, Style style) {
    this.page = new Page(width, style);
  }

  /**
   * The whole answer.
   *
   * @param setAside where the rows set aside are
   */
  public String write(RetrospectiveReport report, String setAside) {
    About about = report.protocol().about();
    page.paragraph(0, about.caution());
    page.blank();
    page.hanging("Protocol  ", title(report.protocol()));
    report.comparison().ifPresent(other -> page.hanging("Against   ", title(other.protocol())));
    page.heading("In short");
    page.paragraph(2, counts(report));
    if (report.counts().setAside() > 0) {
      page.warning(
          count(report.counts().setAside(), "row")
              + " set aside, with "
              + count(report.counts().reasons(), "reason")
              + ", in "
              + setAside);
    }
    page.paragraph(
        2,
        "What was done is held against what this protocol would have said, from what the rows"
            + " state. It says nothing of who was right.");
    for (Ranking ranking : report.protocol().rankings()) {
      ranking(report.totals(), ranking.name());
    }
    whole(report.totals());
    report.comparison().ifPresent(other -> comparison(report, other));
    columns(report);
    return page.toString();
  }

  private static String title(Protocol protocol) {
    About about = protocol.about();
    return about.title() + ", version " + about.version() + ", " + about.status().word();
  }

  private static String counts(RetrospectiveReport report) {
    return count(report.counts().read(), "row")
        + " read = "
        + number(report.counts().judged())
        + " judged + "
        + number(report.counts().setAside())
        + " set aside"
        + (report.blank() == 0 ? "" : "; " + count(report.blank(), "blank row") + " passed over");
  }

  private void ranking(AuditTotals totals, String ranking) {
    Tally all = totals.all(ranking);
    if (all.all() == 0) {
      return;
    }
    page.heading(ranking + ": " + number(all.judged()) + " judged");
    page.marked(2, Mark.ITEM, "the first: " + share(all.first(), all.judged()));
    page.marked(2, Mark.ITEM, "acceptable, behind it: " + share(all.acceptable(), all.judged()));
    page.marked(2, Mark.ITEM, "ruled out: " + share(all.ruledOut(), all.judged()));
    page.marked(2, Mark.ITEM, "none of the options: " + share(all.notRanked(), all.judged()));
    table("By what was done", totals.by(Dimension.OPTION, ranking, ""));
    SortedMap<String, Tally> rows = totals.by(Dimension.ROW, ranking, "");
    page.paragraph(2, "Rows departed from most:");
    rows.entrySet().stream()
        .filter(row -> row.getValue().departed() > 0)
        .sorted(
            Map.Entry.<String, Tally>comparingByValue(
                    java.util.Comparator.comparingLong(Tally::departed).reversed())
                .thenComparing(Map.Entry.comparingByKey()))
        .limit(MOST_LINES)
        .forEach(
            row ->
                page.marked(
                    4,
                    Mark.ITEM,
                    row.getKey()
                        + ": "
                        + number(row.getValue().departed())
                        + " of "
                        + number(row.getValue().judged())));
  }

  private void whole(AuditTotals totals) {
    page.heading("The decision as a whole, by its worst verdict");
    table("By month", totals.by(Dimension.MONTH, AuditTotals.WHOLE, ""));
    table("By role", totals.by(Dimension.ROLE, AuditTotals.WHOLE, ""));
    for (String group : totals.groups()) {
      table("By " + group, totals.by(Dimension.GROUP, AuditTotals.WHOLE, group));
    }
  }

  private void table(String heading, SortedMap<String, Tally> values) {
    page.paragraph(2, heading + " (first, acceptable, ruled out, none of the options):");
    values.entrySet().stream().limit(MOST_LINES).forEach(one -> line(one.getKey(), one.getValue()));
    if (values.size() > MOST_LINES) {
      page.paragraph(
          4, "and " + (values.size() - MOST_LINES) + " more; --format json has them all");
    }
  }

  private void line(String name, Tally tally) {
    page.marked(
        4,
        Mark.ITEM,
        name
            + ": "
            + number(tally.first())
            + ", "
            + number(tally.acceptable())
            + ", "
            + number(tally.ruledOut())
            + ", "
            + number(tally.notRanked()));
  }

  private void comparison(RetrospectiveReport report, RetrospectiveReport.Comparison other) {
    page.heading("What the other protocol judges otherwise");
    DraftChanges changes = other.changes();
    for (Ranking ranking : report.protocol().rankings()) {
      String name = ranking.name();
      long compared = changes.count(Kind.COMPARED, name);
      if (compared == 0) {
        continue;
      }
      page.paragraph(2, name + ", " + number(compared) + " judged by both:");
      page.marked(
          4, Mark.ITEM, "another first: " + share(changes.count(Kind.FIRST, name), compared));
      page.marked(
          4, Mark.ITEM, "judged otherwise: " + share(changes.count(Kind.VERDICT, name), compared));
      page.marked(
          4,
          Mark.ITEM,
          "newly ruled out: "
              + number(changes.verdicts(name, Verdict.RULED_OUT, true))
              + "; no longer ruled out: "
              + number(changes.verdicts(name, Verdict.RULED_OUT, false)));
      Tally now = report.totals().all(name);
      Tally then = other.totals().all(name);
      page.marked(
          4,
          Mark.ITEM,
          "chosen was first or acceptable: "
              + share(now.concordant(), now.judged())
              + " now, "
              + share(then.concordant(), then.judged())
              + " by the other");
      most("by the rows", changes.values(Kind.ROW, name));
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
    changes
        .examples()
        .forEach(
            one ->
                page.marked(
                    4, Mark.ITEM, one.reference() + " (row " + one.row() + "): " + one.change()));
  }

  private void most(String what, SortedMap<String, Long> values) {
    if (values.isEmpty()) {
      return;
    }
    page.paragraph(4, what + ":");
    values.entrySet().stream()
        .sorted(
            Map.Entry.<String, Long>comparingByValue(java.util.Comparator.reverseOrder())
                .thenComparing(Map.Entry.comparingByKey()))
        .limit(MOST_LINES)
        .forEach(one -> page.marked(6, Mark.ITEM, one.getKey() + ": " + number(one.getValue())));
  }

  private void columns(RetrospectiveReport report) {
    MappingText text = new MappingText(page);
    if (report.mapping().used().stream().anyMatch(c -> c.found() == Column.Found.BY_PART)) {
      page.heading("Columns guessed from part of a name: look at them");
      text.guessed(report.mapping());
    }
    text.ignored(report.mapping());
  }

  private static String share(long part, long whole) {
    return whole == 0
        ? "0"
        : number(part) + " (" + String.format(Locale.ROOT, "%.1f", 100.0 * part / whole) + " %)";
  }

  private static String count(long count, String what) {
    return number(count) + " " + what + (count == 1 ? "" : "s");
  }

  private static String number(long number) {
    return String.format(Locale.ROOT, "%,d", number);
  }
}
