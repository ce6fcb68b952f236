package org.cotyla.cli.report;

import org.cotyla.cli.text.Words;
import org.cotyla.evaluate.Identity;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.issue.Issue;
import org.cotyla.protocol.About;

/** What the page can be traced back to. */
final class IdentitySection {

  private final Sheet sheet;

  IdentitySection(Sheet sheet) {
    this.sheet = sheet;
  }

  void write() {
    Recommendation advice = sheet.advice();
    About about = advice.protocol().about();
    Identity identity = advice.identity();
    Markup markup = sheet.markup();
    markup.start("section", "aria-labelledby", "identity");
    markup.leaf("h3", "Which protocol, which case", "id", "identity");
    markup.start("dl", "class", "identity");
    entry("Protocol", about.identifier() + ": " + about.title());
    entry("Version", about.version() + ", " + about.status().word());
    about.effectiveFrom().ifPresent(from -> entry("In force from", from.toString()));
    about.reviewDue().ifPresent(due -> entry("Review due", due.toString()));
    entry("Kept by", about.owner());
    entry("Approved by", about.approvedBy());
    entry("Protocol digest", identity.protocolDigest());
    entry("Case digest", identity.caseDigest());
    entry("Engine", identity.engineVersion());
    int remarks = advice.protocol().remarks().size();
    if (remarks > 0) {
      entry("Workbook", "read with " + Words.count(remarks, "remark"));
    }
    markup.end();
    if (remarks > 0) {
      markup.start("ul", "class", "note");
      advice.protocol().remarks().forEach(this::remark);
      markup.end();
    }
    markup.end();
  }

  private void remark(Issue issue) {
    sheet.markup().leaf("li", issue.place().plain() + ": " + issue.message());
  }

  private void entry(String name, String value) {
    if (!value.isBlank()) {
      sheet.markup().start("div").leaf("dt", name).leaf("dd", value).end();
    }
  }
}
