package org.cotyla.cli.text;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cotyla.evaluate.Fault;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.finding.Findings;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Severity;
import org.cotyla.protocol.About;

/** The caution, which protocol and case this is, and what forbids relying on the answer. */
final class OpeningPart {

  private static final int MOST_WARNINGS = 3;

  private final Page page;

  OpeningPart(Page page) {
    this.page = page;
  }

  void write(Recommendation advice, LocalDate today, Optional<LedgerStanding> ledger) {
    About about = advice.protocol().about();
    page.paragraph(0, about.caution());
    page.blank();
    page.hanging("Protocol  ", about.title() + ", version " + about.version());
    theCase(advice.findings());
    ProtocolWarnings.write(page, about, today, ledger);
    workbook(advice.protocol().remarks());
    advice.remarks().forEach(this::remark);
    faults(advice.faults());
  }

  private void theCase(Findings findings) {
    List<Datum> asked =
        findings.data().stream().filter(datum -> datum.knowledge() != Knowledge.NOT_YET).toList();
    long stated = asked.stream().filter(datum -> datum.knowledge() != Knowledge.MISSING).count();
    String title = findings.title().isBlank() ? "untitled" : findings.title();
    page.hanging("Case      ", title);
    page.hanging(
        "Stage     ",
        findings.stage() + ", " + stated + " of " + asked.size() + " findings stated");
  }

  private void workbook(List<Issue> remarks) {
    List<Issue> warnings =
        remarks.stream().filter(issue -> issue.severity() == Severity.WARNING).toList();
    warnings.stream().limit(MOST_WARNINGS).forEach(this::remark);
    if (warnings.size() > MOST_WARNINGS) {
      page.warning(
          "and "
              + Words.count(warnings.size() - MOST_WARNINGS, "more warning")
              + " about the workbook (see --trace)");
    }
  }

  /** What is accepted but odd may be a slip, on which all else would hang. */
  private void remark(Issue issue) {
    String help = issue.help().map(text -> "; " + text).orElse("");
    page.warning(issue.place().plain() + ": " + issue.message() + help);
  }

  private void faults(List<Fault> faults) {
    if (faults.isEmpty()) {
      return;
    }
    page.heading("The protocol contradicts itself on this case");
    page.warning("Do not rely on what hangs on these decisions; tell the keeper of the protocol.");
    faults.forEach(
        fault ->
            page.marked(
                0,
                Mark.WARNING,
                fault.decision() + ": " + fault.message() + " (" + fault.code() + ")"));
  }
}
