package org.cotyla.cli.text;

import java.util.Locale;
import org.cotyla.audit.AuditReport;
import org.cotyla.retrospective.Column;
import org.cotyla.retrospective.RetrospectiveReport;

/** What past cases come to when a protocol judges them, as text. */
public final class RetrospectAnswer {

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
    page.paragraph(0, report.protocol().about().caution());
    page.blank();
    page.hanging("Protocol  ", RetrospectiveReport.title(report.protocol()));
    report
        .comparison()
        .ifPresent(
            other -> page.hanging("Against   ", RetrospectiveReport.title(other.protocol())));
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
    page.paragraph(2, AuditReport.NO_VERDICT);
    page.paragraph(2, RetrospectiveReport.WHAT_IT_SAYS);
    report.comparison().ifPresent(other -> new OtherProtocolLines(page).write(report, other));
    page.blank();
    new AuditText(page).figures(report.audit());
    columns(report);
    return page.toString();
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

  private void columns(RetrospectiveReport report) {
    MappingText text = new MappingText(page);
    if (report.mapping().used().stream().anyMatch(c -> c.found() == Column.Found.BY_PART)) {
      page.heading("Columns guessed from part of a name: look at them");
      text.guessed(report.mapping());
    }
    text.ignored(report.mapping());
  }

  private static String count(long count, String what) {
    return number(count) + " " + what + (count == 1 ? "" : "s");
  }

  private static String number(long number) {
    return String.format(Locale.ROOT, "%,d", number);
  }
}
