package org.cotyla.cli.text;

import org.cotyla.evaluate.Recommendation;
import org.cotyla.protocol.About;

/** What an answer about the surroundings of a case can be traced back to. */
final class AroundClosing {

  private AroundClosing() {}

  static void write(Page page, Recommendation advice) {
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
            + ", case "
            + Words.digestInShort(advice.identity().caseDigest()));
    page.paragraph(
        0, "Engine " + advice.identity().engineVersion() + ". The whole answer: cotyla recommend");
  }
}
