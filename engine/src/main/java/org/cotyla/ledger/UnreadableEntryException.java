package org.cotyla.ledger;

import java.util.List;
import java.util.Optional;
import org.cotyla.issue.Issue;
import org.cotyla.issue.RejectedException;
import org.cotyla.issue.Severity;

/** The text of an entry cannot be read. */
public final class UnreadableEntryException extends RejectedException {

  private static final long serialVersionUID = 1L;

  private final String why;

  /**
   * @param sequence the number of the row
   * @param why what is wrong, in words that follow the name of the entry
   */
  UnreadableEntryException(long sequence, String why) {
    super(
        List.of(
            new Issue(
                "L044",
                Severity.ERROR,
                LedgerFault.WHOLE,
                "entry " + sequence + " cannot be read: " + why,
                Optional.of("`cotyla verify` tells what is wrong with the ledger"))));
    this.why = why;
  }

  /** What is wrong, in words that follow the name of the entry. */
  public String why() {
    return why;
  }
}
