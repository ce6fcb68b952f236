package org.cotyla.ledger;

import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;

/**
 * What is signed, as canonical JSON. Each statement names the ledger, so that it means nothing in
 * another one, and the digest of the entry before it, so that what came before cannot be rewritten
 * under it.
 */
final class Statement {

  private final Map<String, String> parts = new TreeMap<>();

  private Statement(String act, String ledger, String after, String role) {
    parts.put("act", act);
    parts.put("ledger", ledger);
    parts.put("after", after);
    parts.put("role", role);
  }

  /** The statement that the content of an entry must carry. */
  static String of(Content content, String ledger, String after, String role) {
    if (content instanceof Content.KeyVoucher voucher) {
      return key(voucher.key(), ledger, after, role);
    }
    if (content instanceof Content.KeyWithdrawal withdrawal) {
      return keyWithdrawal(withdrawal.key(), withdrawal.reason(), ledger, after, role);
    }
    if (content instanceof Content.Approval approval) {
      return approval(approval.protocol(), ledger, after, role);
    }
    if (content instanceof Content.Withdrawal gone) {
      return withdrawal(
          gone.release(), gone.protocol(), gone.day(), gone.reason(), ledger, after, role);
    }
    if (content instanceof Content.Checkpoint checkpoint) {
      return checkpoint(checkpoint.sequence(), ledger, checkpoint.digest(), role);
    }
    throw new IllegalArgumentException(content.kind() + " carries no signature");
  }

  static String key(PublicKeyOf key, String ledger, String after, String role) {
    return new Statement("vouch for a key", ledger, after, role)
        .with("key", key.key())
        .with("holder", key.role())
        .text();
  }

  static String keyWithdrawal(String key, String reason, String ledger, String after, String role) {
    return new Statement("withdraw a key", ledger, after, role)
        .with("key", key)
        .with("reason", reason)
        .text();
  }

  static String approval(ProtocolVersion protocol, String ledger, String after, String role) {
    return new Statement("approve a protocol", ledger, after, role).with(protocol).text();
  }

  static String withdrawal(
      long release,
      ProtocolVersion protocol,
      LocalDate day,
      String reason,
      String ledger,
      String after,
      String role) {
    return new Statement("withdraw a protocol", ledger, after, role)
        .with(protocol)
        .with("release", String.valueOf(release))
        .with("day", day.toString())
        .with("reason", reason)
        .text();
  }

  static String checkpoint(long sequence, String ledger, String digest, String role) {
    return new Statement("state of the ledger", ledger, digest, role)
        .with("sequence", String.valueOf(sequence))
        .text();
  }

  private Statement with(String name, String value) {
    parts.put(name, value);
    return this;
  }

  private Statement with(ProtocolVersion protocol) {
    parts.put("identifier", protocol.identifier());
    parts.put("version", protocol.version());
    parts.put("digest", protocol.digest());
    parts.put("lists", protocol.lists());
    parts.put("workbook", protocol.workbook());
    protocol.effectiveFrom().ifPresent(day -> parts.put("effectiveFrom", day.toString()));
    protocol.reviewDue().ifPresent(day -> parts.put("reviewDue", day.toString()));
    return this;
  }

  private String text() {
    return EntryBody.canonical(parts);
  }
}
