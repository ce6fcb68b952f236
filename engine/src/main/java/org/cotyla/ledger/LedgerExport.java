package org.cotyla.ledger;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Writes a ledger as JSON Lines. A line of an entry holds its digest and its text, as one JSON
 * text, so that whoever takes it out has the very bytes of which the digest is taken; a line of a
 * document holds its digest and its bytes in base64.
 */
public final class LedgerExport {

  private LedgerExport() {}

  /**
   * Writes every entry in order.
   *
   * @param documents whether the kept documents follow, each on a line of its own
   */
  public static void write(Ledger ledger, boolean documents, Appendable out) {
    try (Stream<StoredEntry> rows = ledger.stored()) {
      rows.forEach(row -> line(out, Map.of("digest", row.digest(), "entry", row.body())));
    }
    if (documents) {
      try (LedgerReading reading = ledger.reader()) {
        for (String digest : reading.documents()) {
          byte[] plain = reading.document(digest).orElse(new byte[0]);
          String base64 = Base64.getEncoder().encodeToString(plain);
          line(out, Map.of("digest", digest, "document", base64));
        }
      }
    }
  }

  private static void line(Appendable out, Map<String, String> parts) {
    try {
      out.append(EntryBody.canonical(new TreeMap<>(parts))).append('\n');
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }
}
