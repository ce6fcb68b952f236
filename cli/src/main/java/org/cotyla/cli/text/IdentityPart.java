package org.cotyla.cli.text;

import org.cotyla.evaluate.Recommendation;
import org.cotyla.protocol.About;

/** What an explanation can be traced back to. */
final class IdentityPart {

  private final Page page;

  IdentityPart(Page page) {
    this.page = page;
  }

  void write(Recommendation advice) {
    write(advice, ", case " + Words.digestInShort(advice.identity().caseDigest()));
  }

  /** The same of a case before and after. */
  void write(Recommendation before, Recommendation after) {
    write(
        after,
        ", case before "
            + Words.digestInShort(before.identity().caseDigest())
            + ", after "
            + Words.digestInShort(after.identity().caseDigest()));
  }

  private void write(Recommendation advice, String cases) {
    About about = advice.protocol().about();
    page.blank();
    page.paragraph(
        0,
        "Protocol "
            + about.identifier()
            + " "
            + about.version()
            + " "
            + Words.digestInShort(advice.protocolDigest())
            + cases
            + ", engine "
            + advice.identity().engineVersion()
            + ". The whole answer: cotyla recommend");
  }
}
