package org.cotyla.ledger;

/** The text of an entry cannot be read; the message says why, in words that follow its name. */
public final class UnreadableEntryException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String why;

  UnreadableEntryException(String why) {
    super(why);
    this.why = why;
  }

  /** What is wrong, in words that follow the name of the entry. */
  public String why() {
    return why;
  }
}
