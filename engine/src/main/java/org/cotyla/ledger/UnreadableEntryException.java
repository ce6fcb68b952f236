package org.cotyla.ledger;

/** The text of an entry cannot be read; the message says why, in words that follow its name. */
public final class UnreadableEntryException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  UnreadableEntryException(String message) {
    super(message);
  }
}
