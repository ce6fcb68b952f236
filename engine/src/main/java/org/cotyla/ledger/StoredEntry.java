package org.cotyla.ledger;

import java.util.Optional;

/** A row of the table of entries as it is stored; what it says need not be true. */
public record StoredEntry(
    long sequence,
    String kind,
    Optional<String> caseReference,
    String previous,
    String digest,
    String body) {

  /** The entry that the body tells of. */
  Entry read() {
    return EntryBody.read(sequence, body, digest);
  }
}
