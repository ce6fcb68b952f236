package org.cotyla.ledger;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What can be read of a ledger. Streams hold a connection and must be closed. */
public interface LedgerSource {

  /**
   * Every entry in order, as the ledger stood when the stream was opened. It is read as it goes, so
   * it may be longer than what fits into memory. Digests are not checked here; that is what
   * verifying is for.
   *
   * @throws UnreadableEntryException while it goes, when the text of an entry cannot be read
   */
  Stream<Entry> entries();

  /** The entries of these kinds in order, with numbers above the given one. */
  Stream<Entry> entries(Set<Kind> kinds, long after);

  /** The entries about a case, in order. */
  Stream<Entry> entriesAbout(String caseReference);

  /** The entry with the number. */
  Optional<Entry> entry(long sequence);

  /** A document that was kept, by the digest of its bytes. */
  Optional<byte[]> document(String digest);
}
