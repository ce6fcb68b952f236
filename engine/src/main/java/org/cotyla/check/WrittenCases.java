package org.cotyla.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.evaluate.Engine;
import org.cotyla.finding.Case;
import org.cotyla.issue.Issue;
import org.cotyla.issue.RejectedException;
import org.cotyla.issue.Severity;
import org.cotyla.protocol.TestCase;

/**
 * The cases that stand in the protocol's own workbook: what of them cannot be read. It stops no
 * answer, so it is a warning here; a run of the cases refuses them.
 */
final class WrittenCases {

  private WrittenCases() {}

  static List<Remark> remarks(Engine engine) {
    List<Remark> remarks = new ArrayList<>();
    for (TestCase written : engine.protocol().checks().cases()) {
      try {
        engine.read(Case.of(written));
      } catch (RejectedException refused) {
        refused
            .issues()
            .forEach(
                issue -> remarks.add(new Remark(warning(issue), written.name(), Optional.empty())));
      }
    }
    return remarks;
  }

  private static Issue warning(Issue issue) {
    return new Issue(issue.code(), Severity.WARNING, issue.place(), issue.message(), issue.help());
  }
}
