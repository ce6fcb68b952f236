package org.cotyla.check;

import java.util.Optional;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Severity;
import org.cotyla.protocol.Acceptance;

/**
 * Something that a check has to say of a protocol.
 *
 * @param issue what, where and how bad
 * @param about the row id, name or cell that it is about; a lead accepts it under this
 * @param example a case that shows it, with no more findings than needed
 * @param accepted why it is let stand, when the workbook says so; only warnings can be accepted
 */
public record Remark(
    Issue issue, String about, Optional<Recommendation> example, Optional<Acceptance> accepted) {

  Remark(Issue issue, String about, Optional<Recommendation> example) {
    this(issue, about, example, Optional.empty());
  }

  Remark acceptedBy(Acceptance acceptance) {
    return new Remark(issue, about, example, Optional.of(acceptance));
  }

  /** Whether it stands against the protocol: an error, or a warning that nobody accepted. */
  public boolean isOpen() {
    return issue.severity() != Severity.NOTE && accepted.isEmpty();
  }
}
