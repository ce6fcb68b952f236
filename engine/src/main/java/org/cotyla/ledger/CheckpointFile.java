package org.cotyla.ledger;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.cotyla.issue.RejectedException;

/**
 * A signed state of a ledger, small enough to be printed and kept elsewhere.
 *
 * @param ledger the ledger's name
 * @param entry the number of the entry that holds the checkpoint
 * @param sequence the number of the entry before it, whose state is signed
 * @param digest the digest of that entry
 * @param time when it was signed
 * @param publicKey the public key in base64
 * @param signature role, key, statement and value
 */
public record CheckpointFile(
    String ledger,
    long entry,
    long sequence,
    String digest,
    String time,
    String publicKey,
    Signature signature) {

  /** The checkpoint that an entry of a ledger holds. */
  public static CheckpointFile of(Entry entry, Governance governance) {
    if (!(entry.content() instanceof Content.Checkpoint checkpoint)) {
      throw new IllegalArgumentException("entry " + entry.sequence() + " is no checkpoint");
    }
    String key =
        governance
            .key(checkpoint.signature().key())
            .map(PublicKeyOf::key)
            .orElseThrow(() -> new IllegalArgumentException("its key does not count"));
    return new CheckpointFile(
        governance.ledger(),
        entry.sequence(),
        checkpoint.sequence(),
        checkpoint.digest(),
        entry.time().toString(),
        key,
        checkpoint.signature());
  }

  /** As JSON, one part a line. */
  public String write() {
    Map<String, String> parts = new TreeMap<>();
    parts.put("ledger", ledger);
    parts.put("entry", String.valueOf(entry));
    parts.put("sequence", String.valueOf(sequence));
    parts.put("digest", digest);
    parts.put("time", time);
    parts.put("publicKey", publicKey);
    parts.put("role", signature.role());
    parts.put("key", signature.key());
    parts.put("statement", signature.statement());
    parts.put("signature", signature.value());
    return EntryBody.indented(parts);
  }

  /**
   * Reads what was written.
   *
   * @throws RejectedException when it is not a checkpoint
   */
  public static CheckpointFile read(String json) {
    Optional<Map<String, String>> parts = EntryBody.parts(json);
    try {
      Map<String, String> known = parts.orElseThrow(CheckpointFile::unreadable);
      return new CheckpointFile(
          part(known, "ledger"),
          Long.parseLong(part(known, "entry")),
          Long.parseLong(part(known, "sequence")),
          part(known, "digest"),
          part(known, "time"),
          part(known, "publicKey"),
          new Signature(
              part(known, "role"),
              part(known, "key"),
              part(known, "statement"),
              part(known, "signature")));
    } catch (NumberFormatException noNumber) {
      throw unreadable();
    }
  }

  private static String part(Map<String, String> parts, String name) {
    return Optional.ofNullable(parts.get(name)).orElseThrow(CheckpointFile::unreadable);
  }

  private static RejectedException unreadable() {
    return LedgerFault.of(
        "L050", "the file is not a checkpoint", "give the file that `cotyla checkpoint` wrote");
  }

  /** Whether what is signed is what it says, by the key that it names. */
  boolean isSound() {
    PublicKeyOf key = new PublicKeyOf(signature.role(), publicKey);
    String expected = Statement.checkpoint(sequence, ledger, digest, signature.role());
    try {
      return key.name().equals(signature.key())
          && expected.equals(signature.statement())
          && SigningKey.verifies(key, signature);
    } catch (IllegalArgumentException notBase64) {
      return false;
    }
  }
}
