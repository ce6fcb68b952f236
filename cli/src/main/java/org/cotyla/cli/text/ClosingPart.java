package org.cotyla.cli.text;

import java.util.List;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.issue.Issue;
import org.cotyla.protocol.About;

/** Remarks on the case and the protocol, and what the answer can be traced back to. */
final class ClosingPart {

  private final Page page;

  ClosingPart(Page page) {
    this.page = page;
  }

  void write(Recommendation advice, boolean trace) {
    remarks(advice, trace);
    About about = advice.protocol().about();
    page.blank();
    page.paragraph(
        0,
        "Protocol "
            + about.identifier()
            + " "
            + about.version()
            + " "
            + Words.digestInShort(advice.identity().protocolDigest())
            + ", case "
            + Words.digestInShort(advice.identity().caseDigest())
            + ", engine "
            + advice.identity().engineVersion()
            + (trace ? "" : ". Every row that fired: --trace"));
  }

  private void remarks(Recommendation advice, boolean trace) {
    List<Issue> ofProtocol = advice.protocol().remarks();
    if (ofProtocol.isEmpty()) {
      return;
    }
    page.heading("Remarks");
    if (trace) {
      ofProtocol.forEach(this::remark);
    } else {
      page.marked(
          2,
          Mark.ITEM,
          "the workbook was read with "
              + Words.count(ofProtocol.size(), "remark")
              + " (see --trace)");
    }
  }

  private void remark(Issue issue) {
    String help = issue.help().map(advice -> "; " + advice).orElse("");
    page.marked(2, Mark.ITEM, issue.place().plain() + ": " + issue.message() + help);
  }
}
