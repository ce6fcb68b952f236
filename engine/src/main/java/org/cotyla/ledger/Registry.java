package org.cotyla.ledger;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cotyla.issue.Issues;
import org.cotyla.issue.RejectedException;
import org.cotyla.privacy.Wording;

/** The life of protocols and keys in a ledger: approving, releasing, withdrawing. */
public final class Registry {

  private final Ledger ledger;

  public Registry(Ledger ledger) {
    this.ledger = ledger;
  }

  /**
   * An approval, and the release when it was the last one needed.
   *
   * @param effectiveFrom the first day in force
   */
  public record Approving(Entry approval, Optional<Entry> release, LocalDate effectiveFrom) {}

  /**
   * Approves a protocol. When two roles have approved the same for the same day, it is released.
   *
   * @param from the first day in force; as the workbook says, or the earlier approval, when absent
   * @throws RejectedException when it cannot be approved
   */
  public Approving approve(ProtocolFile file, Optional<LocalDate> from, Signer signer) {
    return ledger.write(
        writing -> {
          ProtocolVersion version = dated(file, from, writing.governance());
          requireNew(version, signer, writing.governance());
          file.keepIn(writing);
          Entry approval =
              Signing.append(
                  writing, signer, signature -> new Content.Approval(version, signature));
          List<Long> agreeing =
              writing.governance().agreeing(version).stream()
                  .map(Governance.Approved::sequence)
                  .toList();
          Optional<Entry> release =
              agreeing.size() < KeyRules.AGREE
                  ? Optional.empty()
                  : Optional.of(writing.append(new Content.Release(version, agreeing)));
          return new Approving(approval, release, version.effectiveFrom().orElseThrow());
        });
  }

  private static ProtocolVersion dated(
      ProtocolFile file, Optional<LocalDate> from, Governance governance) {
    ProtocolVersion version = file.from(from);
    if (version.effectiveFrom().isPresent()) {
      return version;
    }
    Optional<LocalDate> earlier =
        governance.approvals().stream()
            .map(approved -> approved.approval().protocol())
            .filter(version::isSameAs)
            .reduce((first, second) -> second)
            .flatMap(ProtocolVersion::effectiveFrom);
    if (earlier.isEmpty()) {
      throw LedgerFault.of(
          "L030",
          "nothing says from which day the protocol is to be in force",
          "write `effective from` on the sheet Protocol, or give --effective-from YEAR-MONTH-DAY");
    }
    return file.from(earlier);
  }

  private static void requireNew(ProtocolVersion version, Signer signer, Governance governance) {
    for (Governance.Released release : governance.releases()) {
      ProtocolVersion other = release.protocol();
      boolean standing = governance.withdrawal(release).isEmpty();
      if (other.isSameAs(version) && standing) {
        throw LedgerFault.of(
            "L031", named(version) + " was released already, by entry " + release.sequence());
      }
      if (other.identifier().equals(version.identifier())
          && other.version().equals(version.version())
          && !other.isOfSameContent(version)) {
        throw LedgerFault.of(
            "L032",
            named(version) + " was released with other content, by entry " + release.sequence(),
            "give what was edited a version of its own");
      }
    }
    governance.agreeing(version).stream()
        .filter(approved -> approved.approval().signature().role().equals(signer.role()))
        .findFirst()
        .ifPresent(
            approved -> {
              throw LedgerFault.of(
                  "L033",
                  "`"
                      + signer.role()
                      + "` has approved this already, by entry "
                      + approved.sequence(),
                  "the second approval is another role's, with its own key");
            });
  }

  /**
   * Takes the release of a protocol that is or will be in force out of force.
   *
   * @param version its version; the one that was released last when absent
   * @throws RejectedException when there is none
   */
  public Entry withdraw(
      String identifier, Optional<String> version, LocalDate day, String reason, Signer signer) {
    requireText("reason", reason);
    return ledger.write(
        writing -> {
          Governance governance = writing.governance();
          Governance.Released release =
              governance.releases().stream()
                  .filter(known -> known.protocol().identifier().equals(identifier))
                  .filter(
                      known ->
                          version.isEmpty() || version.get().equals(known.protocol().version()))
                  .filter(known -> governance.withdrawal(known).isEmpty())
                  .reduce((earlier, later) -> later)
                  .orElseThrow(
                      () ->
                          LedgerFault.of(
                              "L034",
                              "no release of `"
                                  + identifier
                                  + "`"
                                  + version.map(number -> ", version " + number + ",").orElse("")
                                  + " stands in this ledger"));
          return Signing.append(
              writing,
              signer,
              signature ->
                  new Content.Withdrawal(
                      release.sequence(), day, release.protocol(), reason, signature));
        });
  }

  /**
   * Vouches for a further key; it counts once two roles have.
   *
   * @throws RejectedException when the key or its role counts already
   */
  public Entry vouch(PublicKeyOf key, Signer signer) {
    Issues issues = new Issues();
    Wording.role(key.role(), issues);
    throwIfAny(issues);
    return ledger.write(
        writing -> {
          KeyRules.requireNew(key, writing.governance());
          return Signing.append(
              writing, signer, signature -> new Content.KeyVoucher(key, signature));
        });
  }

  /**
   * Withdraws the key of a role, at once.
   *
   * @throws RejectedException when fewer than two keys would be left
   */
  public Entry withdrawKey(String role, String reason, Signer signer) {
    requireText("reason", reason);
    return ledger.write(
        writing -> {
          List<PublicKeyOf> keys = writing.governance().keys();
          PublicKeyOf key =
              keys.stream()
                  .filter(known -> known.role().equals(role))
                  .findFirst()
                  .orElseThrow(
                      () -> LedgerFault.of("L022", "no key of the role `" + role + "` counts"));
          KeyRules.requireEnoughWithout(key.name(), writing.governance());
          return Signing.append(
              writing,
              signer,
              signature -> new Content.KeyWithdrawal(key.name(), reason, signature));
        });
  }

  /** Signs the state that the ledger is in. */
  public Entry checkpoint(Signer signer) {
    return ledger.write(
        writing -> {
          LedgerWriting.Head head = writing.head();
          return Signing.append(
              writing,
              signer,
              signature -> new Content.Checkpoint(head.sequence(), head.digest(), signature));
        });
  }

  private static String named(ProtocolVersion version) {
    return "version " + version.version() + " of `" + version.identifier() + "`";
  }

  private static void requireText(String what, String text) {
    Issues issues = new Issues();
    Wording.text(what, text, issues);
    throwIfAny(issues);
  }

  static void throwIfAny(Issues issues) {
    if (issues.hasErrors()) {
      throw new RejectedException(issues.list());
    }
  }
}
