package org.cotyla.ledger;

import java.util.Arrays;
import java.util.Optional;

/** What an entry is about. */
public enum Kind {
  /** The ledger's beginning, with the first keys. */
  FOUNDING("founding"),
  /** A holder of a key vouches for a further key. */
  KEY("key"),
  /** A key counts no more from here on. */
  KEY_WITHDRAWAL("key withdrawal"),
  /** A role approves a protocol. */
  APPROVAL("approval"),
  /** A protocol has its approvals, and is in force from its day on. */
  RELEASE("release"),
  /** A protocol is taken out of force. */
  WITHDRAWAL("withdrawal"),
  /** A case was run, with what came out. */
  RECOMMENDATION("recommendation"),
  /** What was done. */
  DECISION("decision"),
  /** What came of it later. */
  OUTCOME("outcome"),
  /** The state of the ledger, signed. */
  CHECKPOINT("checkpoint");

  private final String word;

  Kind(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  public static Optional<Kind> of(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
  }

  @Override
  public String toString() {
    return word;
  }
}
