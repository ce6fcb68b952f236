package org.cotyla.cli.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.issue.Issue;
import org.cotyla.protocol.About;
import org.cotyla.trial.Difference;
import org.cotyla.trial.Outcome;
import org.cotyla.trial.TrialReport;
import org.cotyla.trial.TrialReport.Unexercised;
import org.cotyla.trial.Tried;

/** What came of cases that were tried, as text. */
public final class TrialAnswer {

  private final Page page;

  public TrialAnswer(int width, Style style) {
    this.page = new Page(width, style);
  }

  /**
   * The whole answer.
   *
   * @param library the folder of the case library, when there is one
   */
  public String write(TrialReport report, Optional<String> library) {
    About about = report.protocol().about();
    page.paragraph(0, about.caution());
    page.blank();
    page.hanging("Protocol  ", about.title() + ", version " + about.version());
    int onSheet = report.protocol().checks().cases().size();
    int inLibrary = report.tried().size() - onSheet;
    page.hanging(
        "Cases     ",
        onSheet
            + " on the sheet Cases"
            + library.map(folder -> ", " + inLibrary + " in " + folder).orElse("; no library"));
    page.heading("In short");
    page.paragraph(2, inShort(report));
    part("Not as expected", report.failed());
    part("Cannot be run", report.refused());
    unexercised(report);
    return page.toString();
  }

  private static String inShort(TrialReport report) {
    int all = report.tried().size();
    if (all == 0) {
      return "There is no case to try: write some on a sheet Cases, or name a library.";
    }
    List<String> parts = new ArrayList<>();
    int passed = all - report.failed().size() - report.refused().size();
    parts.add(passed == all ? "all " + Words.count(all, "case") + " passed" : passed + " passed");
    if (!report.failed().isEmpty()) {
      parts.add(report.failed().size() + " not as expected");
    }
    if (!report.refused().isEmpty()) {
      parts.add(report.refused().size() + " cannot be run");
    }
    return String.join(", ", parts);
  }

  private void part(String heading, List<Tried> tried) {
    if (tried.isEmpty()) {
      return;
    }
    page.heading(heading);
    for (Tried one : tried) {
      page.marked(0, Mark.RULED_OUT, one.suite() + ": " + one.name());
      if (!one.because().isEmpty()) {
        page.paragraph(4, one.because());
      }
      if (one.outcome() instanceof Outcome.Failed failed) {
        failed.differences().forEach(this::difference);
      } else if (one.outcome() instanceof Outcome.Refused refused) {
        refused.issues().forEach(this::issue);
      }
    }
  }

  private void difference(Difference difference) {
    page.marked(4, Mark.ITEM, difference.plain());
  }

  private void issue(Issue issue) {
    page.marked(4, Mark.ITEM, issue.code() + " " + issue.place().plain() + ": " + issue.message());
    issue.help().ifPresent(help -> page.paragraph(6, help));
  }

  private void unexercised(TrialReport report) {
    long all = report.protocol().allRows().count();
    page.heading("Rows that no case exercises");
    if (report.unexercised().isEmpty()) {
      page.paragraph(2, "None: each of the " + all + " rows counts as certain in some case.");
      return;
    }
    page.paragraph(
        2,
        report.unexercised().size()
            + " of "
            + Words.count((int) all, "row")
            + (report.unexercised().size() == 1 ? " counts" : " count")
            + " as certain in no case:");
    Map<String, List<String>> byDecision = new LinkedHashMap<>();
    for (Unexercised one : report.unexercised()) {
      byDecision
          .computeIfAbsent(one.decision().name(), name -> new ArrayList<>())
          .add(one.row().id());
    }
    byDecision.forEach(
        (decision, rows) -> page.marked(2, Mark.ITEM, decision + ": " + String.join(", ", rows)));
  }
}
