package org.cotyla.ledger;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cotyla.issue.Issues;
import org.cotyla.issue.RejectedException;
import org.cotyla.privacy.Wording;

/** Which keys count, and whether what was signed holds. */
final class KeyRules {

  /** How many must agree. */
  static final int AGREE = 2;

  private KeyRules() {}

  /** A ledger begins with two keys of two roles at least, or nothing could ever be approved. */
  static void requireFounders(List<PublicKeyOf> keys) {
    Issues issues = new Issues();
    Set<String> names = new HashSet<>();
    Set<String> roles = new HashSet<>();
    for (PublicKeyOf key : keys) {
      Wording.role(key.role(), issues);
      if (!names.add(key.name())) {
        issues.error("L021", LedgerFault.WHOLE, "one key is given twice, for `" + key.role() + "`");
      }
      if (!roles.add(key.role())) {
        issues.error("L021", LedgerFault.WHOLE, "the role `" + key.role() + "` is given twice");
      }
    }
    if (keys.size() < AGREE) {
      issues.error(
          "L021",
          LedgerFault.WHOLE,
          "a ledger begins with the keys of two roles at least, since two must approve",
          "give --approver ROLE=FILE.pub for each");
    }
    if (issues.hasErrors()) {
      throw new RejectedException(issues.list());
    }
  }

  /**
   * A key is vouched for while neither it nor another key of its role counts.
   *
   * @throws RejectedException when it is otherwise
   */
  static void requireNew(PublicKeyOf key, Governance governance) {
    boolean taken =
        governance.keys().stream()
            .anyMatch(k -> k.role().equals(key.role()) || k.name().equals(key.name()));
    if (taken) {
      throw LedgerFault.of(
          "L024",
          "this key, or a key of the role `" + key.role() + "`, counts already",
          "withdraw the earlier key first");
    }
  }

  /**
   * Two keys are left when one is withdrawn.
   *
   * @throws RejectedException when fewer would be
   */
  static void requireEnoughWithout(String name, Governance governance) {
    long left = governance.keys().stream().filter(key -> !key.name().equals(name)).count();
    if (left < AGREE) {
      throw LedgerFault.of(
          "L025",
          "with this key gone, fewer than two would be left, and nothing could be approved",
          "vouch for another key first");
    }
  }

  /** The signature of an entry, when its kind carries one. */
  static Optional<Signature> signature(Content content) {
    if (content instanceof Content.KeyVoucher voucher) {
      return Optional.of(voucher.signature());
    }
    if (content instanceof Content.KeyWithdrawal withdrawal) {
      return Optional.of(withdrawal.signature());
    }
    if (content instanceof Content.Approval approval) {
      return Optional.of(approval.signature());
    }
    if (content instanceof Content.Withdrawal withdrawal) {
      return Optional.of(withdrawal.signature());
    }
    return content instanceof Content.Checkpoint checkpoint
        ? Optional.of(checkpoint.signature())
        : Optional.empty();
  }

  /** Why the signature of an entry does not hold, by the keys before it; nothing when it does. */
  static Optional<String> fault(Entry entry, Governance before) {
    Optional<Signature> signed = signature(entry.content());
    if (signed.isEmpty()) {
      return Optional.empty();
    }
    Signature signature = signed.get();
    Optional<PublicKeyOf> key = before.key(signature.key());
    if (key.isEmpty()) {
      return Optional.of("its key does not count in this ledger at that point");
    }
    if (!key.get().role().equals(signature.role())) {
      return Optional.of("its key is not that of the role `" + signature.role() + "`");
    }
    String expected =
        Statement.of(entry.content(), before.ledger(), entry.previous(), signature.role());
    if (!expected.equals(signature.statement())) {
      return Optional.of("what was signed is not what the entry says");
    }
    return SigningKey.verifies(key.get(), signature)
        ? Optional.empty()
        : Optional.of("its signature is not one of what it says");
  }
}
