package org.cotyla.cli.text;

import org.cotyla.evaluate.Recommendation;
import org.cotyla.explain.Comparison;
import org.cotyla.issue.Issue;
import org.cotyla.protocol.About;

/** Remarks on the case of now, and what the answer can be traced back to. */
final class ReplanClosing {

  private final Page page;

  ReplanClosing(Page page) {
    this.page = page;
  }

  void write(Comparison comparison) {
    Recommendation after = comparison.after();
    if (!after.remarks().isEmpty()) {
      page.heading("Remarks");
      after.remarks().forEach(this::remark);
    }
    About about = after.protocol().about();
    page.blank();
    page.paragraph(
        0,
        "Protocol "
            + about.identifier()
            + " "
            + about.version()
            + " "
            + Words.digestInShort(after.protocolDigest())
            + ", plan "
            + Words.digestInShort(comparison.before().identity().caseDigest())
            + ", case now "
            + Words.digestInShort(after.identity().caseDigest()));
    page.paragraph(
        0,
        "Engine "
            + after.identity().engineVersion()
            + ". The whole answer on either case: cotyla recommend");
  }

  private void remark(Issue issue) {
    String help = issue.help().map(advice -> "; " + advice).orElse("");
    page.marked(2, Mark.ITEM, issue.place().plain() + ": " + issue.message() + help);
  }
}
