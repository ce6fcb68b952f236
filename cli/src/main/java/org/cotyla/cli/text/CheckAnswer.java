package org.cotyla.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.cotyla.check.CheckReport;
import org.cotyla.check.Remark;
import org.cotyla.check.SafeguardVerdict;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Severity;
import org.cotyla.protocol.About;
import org.cotyla.protocol.Acceptance;
import org.cotyla.value.Truth;

/** Writes for people what a check found, worst first, and which safeguards are proven. */
public final class CheckAnswer {

  private static final int FINDINGS_SHOWN = 12;

  private final Page page;

  public CheckAnswer(int width, Style style) {
    this.page = new Page(width, style);
  }

  /** A report on a protocol that could be read. */
  public String write(CheckReport report) {
    About about = report.protocol().about();
    page.paragraph(0, "Check of " + about.title() + ", version " + about.version());
    page.paragraph(0, summary(report));
    remarks(report, Severity.ERROR, "Errors");
    remarks(report, Severity.WARNING, "Warnings");
    accepted(report.accepted());
    remarks(report, Severity.NOTE, "Notes");
    safeguards(report.safeguards(), new SafeguardWords(report.protocol()));
    page.blank();
    page.paragraph(
        0,
        "Every statement holds for all complete cases at every stage, or says that it is"
            + " undecided. Protocol "
            + about.identifier()
            + " "
            + about.version()
            + " "
            + Words.digestInShort(report.protocolDigest())
            + ".");
    page.warning(about.caution());
    return page.toString();
  }

  /** What is wrong with a workbook that could not be read as a protocol. */
  public String write(String file, List<Issue> issues) {
    page.paragraph(0, "Check of " + file);
    page.paragraph(
        0,
        "It cannot be read as a protocol yet, so nothing more could be checked. "
            + count(issues, Severity.ERROR)
            + ".");
    page.heading("Faults");
    issues.forEach(this::issue);
    return page.toString();
  }

  private static String count(List<Issue> issues, Severity severity) {
    long number = issues.stream().filter(issue -> issue.severity() == severity).count();
    return Words.count((int) number, severity.word());
  }

  private static String summary(CheckReport report) {
    int rows = (int) report.protocol().allRows().count();
    List<String> counts = new ArrayList<>();
    counts.add(Words.count((int) report.count(Severity.ERROR), "error"));
    counts.add(Words.count((int) report.count(Severity.WARNING), "warning"));
    counts.add(report.accepted().size() + " accepted");
    counts.add(Words.count((int) report.count(Severity.NOTE), "note"));
    return Words.count(report.protocol().decisions().size(), "decision")
        + ", "
        + Words.count(rows, "row")
        + ", "
        + Words.count(report.safeguards().size(), "safeguard")
        + ": "
        + String.join(", ", counts)
        + ".";
  }

  private void remarks(CheckReport report, Severity severity, String heading) {
    List<Remark> found =
        report.remarks().stream()
            .filter(remark -> remark.issue().severity() == severity)
            .filter(remark -> remark.accepted().isEmpty())
            .toList();
    if (!found.isEmpty()) {
      page.heading(heading);
      for (Remark remark : found) {
        issue(remark.issue());
        remark.example().ifPresent(this::example);
      }
    }
  }

  private void issue(Issue issue) {
    Mark mark =
        switch (issue.severity()) {
          case ERROR -> Mark.RULED_OUT;
          case WARNING -> Mark.WARNING;
          case NOTE -> Mark.ITEM;
        };
    page.marked(2, mark, issue.code(), issue.place().plain() + ": " + issue.message());
    issue.help().ifPresent(help -> page.hanging("         help: ", help));
  }

  private void example(Recommendation answer) {
    List<String> findings =
        answer.findings().data().stream()
            .filter(datum -> datum.knowledge() == Knowledge.RECORDED)
            .map(CheckAnswer::finding)
            .toList();
    String more =
        findings.size() > FINDINGS_SHOWN
            ? " and " + (findings.size() - FINDINGS_SHOWN) + " more"
            : "";
    String listed = findings.stream().limit(FINDINGS_SHOWN).collect(Collectors.joining("; "));
    page.hanging(
        "         case: ",
        "at " + answer.findings().stage() + ": " + (findings.isEmpty() ? "any" : listed + more));
  }

  private static String finding(Datum datum) {
    return datum.field().name() + " " + Amounts.of(datum.value(), datum.field());
  }

  private void accepted(List<Remark> accepted) {
    if (accepted.isEmpty()) {
      return;
    }
    page.heading("Warnings that are accepted");
    for (Remark remark : accepted) {
      issue(remark.issue());
      Acceptance acceptance = remark.accepted().orElseThrow();
      page.hanging(
          "         accepted: ",
          acceptance.because()
              + " ("
              + acceptance.by()
              + acceptance.date().map(date -> ", " + date).orElse("")
              + ", "
              + acceptance.at().plain()
              + ")");
    }
  }

  private void safeguards(List<SafeguardVerdict> verdicts, SafeguardWords words) {
    if (verdicts.isEmpty()) {
      return;
    }
    page.heading("Safeguards");
    for (SafeguardVerdict verdict : verdicts) {
      String what = verdict.safeguard().id() + ": " + words.sentence(verdict.safeguard());
      if (verdict instanceof SafeguardVerdict.Proven proven) {
        page.marked(2, Mark.FOR, "proven   ", what + conditions(proven.applies()));
      } else if (verdict instanceof SafeguardVerdict.Broken) {
        page.marked(2, Mark.RULED_OUT, "BROKEN   ", what + "; the case stands above");
      } else if (verdict instanceof SafeguardVerdict.Undecided undecided) {
        page.marked(2, Mark.OPEN, "undecided", what + ": " + undecided.why());
      }
    }
  }

  private static String conditions(Truth met) {
    return switch (met) {
      case TRUE -> "";
      case FALSE -> " (no case meets its conditions)";
      case OPEN -> " (whether any case meets its conditions is undecided)";
    };
  }
}
