package org.cotyla.ledger;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What the keys, approvals, releases and withdrawals of a ledger come to, up to an entry. An entry
 * whose signature does not hold counts for nothing, and so does a release without the approvals of
 * two roles. Immutable.
 *
 * @param ledger the ledger's name; empty before its founding
 * @param upTo the last entry that was looked at
 * @param keys the keys that count
 * @param vouchers who vouched for keys that do not count yet
 * @param approvals approvals since the last release or withdrawal of their protocol
 * @param releases every release
 * @param withdrawals every withdrawal
 */
public record Governance(
    String ledger,
    long upTo,
    List<PublicKeyOf> keys,
    List<Content.KeyVoucher> vouchers,
    List<Approved> approvals,
    List<Released> releases,
    List<Content.Withdrawal> withdrawals) {

  /** The state before a ledger's founding. */
  public static final Governance NONE =
      new Governance("", 0, List.of(), List.of(), List.of(), List.of(), List.of());

  private static final Set<Kind> KINDS =
      Set.of(
          Kind.FOUNDING,
          Kind.KEY,
          Kind.KEY_WITHDRAWAL,
          Kind.APPROVAL,
          Kind.RELEASE,
          Kind.WITHDRAWAL);

  /** An approval and its entry. */
  public record Approved(long sequence, Content.Approval approval) {}

  /** A release and its entry. */
  public record Released(long sequence, ProtocolVersion protocol) {
    LocalDate from() {
      return protocol.effectiveFrom().orElse(LocalDate.MAX);
    }
  }

  public Governance {
    keys = List.copyOf(keys);
    vouchers = List.copyOf(vouchers);
    approvals = List.copyOf(approvals);
    releases = List.copyOf(releases);
    withdrawals = List.copyOf(withdrawals);
  }

  /** The key by its name, when it counts. */
  public Optional<PublicKeyOf> key(String name) {
    return keys.stream().filter(key -> key.name().equals(name)).findFirst();
  }

  /** Where a protocol is in its life on a day. */
  public Life life(ProtocolVersion protocol, LocalDate day) {
    Optional<Released> release = lastRelease(protocol);
    if (release.isEmpty()) {
      return Life.DRAFT;
    }
    if (withdrawal(release.get()).isPresent()) {
      return Life.WITHDRAWN;
    }
    if (release.get().from().isAfter(day)) {
      return Life.APPROVED;
    }
    return successor(release.get(), day).isPresent() ? Life.SUPERSEDED : Life.IN_FORCE;
  }

  /** The release that is in force on a day. */
  public Optional<Released> inForce(String identifier, LocalDate day) {
    return releases.stream()
        .filter(release -> release.protocol().identifier().equals(identifier))
        .filter(release -> lastRelease(release.protocol()).filter(release::equals).isPresent())
        .filter(release -> life(release.protocol(), day) == Life.IN_FORCE)
        .findFirst();
  }

  /** The last release of the same protocol. */
  public Optional<Released> lastRelease(ProtocolVersion protocol) {
    return releases.stream()
        .filter(release -> release.protocol().isSameAs(protocol))
        .reduce((earlier, later) -> later);
  }

  /** The withdrawal of a release. */
  public Optional<Content.Withdrawal> withdrawal(Released release) {
    return withdrawals.stream()
        .filter(withdrawal -> withdrawal.release() == release.sequence())
        .findFirst();
  }

  /**
   * The release that took the place of another. One that was withdrawn before its day never did;
   * one that was withdrawn later does not bring the earlier one back.
   */
  private Optional<Released> successor(Released release, LocalDate day) {
    Comparator<Released> order =
        Comparator.comparing(Released::from).thenComparingLong(Released::sequence);
    return releases.stream()
        .filter(other -> other.protocol().identifier().equals(release.protocol().identifier()))
        .filter(other -> !other.protocol().isSameAs(release.protocol()))
        .filter(other -> !other.from().isAfter(day) && order.compare(other, release) > 0)
        .filter(
            other ->
                withdrawal(other)
                    .filter(withdrawal -> withdrawal.day().isBefore(other.from()))
                    .isEmpty())
        .max(order);
  }

  /** Approvals of this protocol for this day that count together, one for each key and role. */
  List<Approved> agreeing(ProtocolVersion protocol) {
    Map<String, Approved> byRole = new LinkedHashMap<>();
    approvals.stream()
        .filter(
            approved ->
                approved.approval().protocol().isSameAs(protocol)
                    && approved
                        .approval()
                        .protocol()
                        .effectiveFrom()
                        .equals(protocol.effectiveFrom()))
        .filter(approved -> key(approved.approval().signature().key()).isPresent())
        .forEach(approved -> byRole.putIfAbsent(approved.approval().signature().role(), approved));
    return List.copyOf(byRole.values());
  }

  /** The state after the entries of a ledger that were not looked at yet. */
  Governance with(LedgerSource source) {
    try (Stream<Entry> later = source.entries(KINDS, upTo)) {
      Governance state = this;
      for (Entry entry : (Iterable<Entry>) later::iterator) {
        state = state.with(entry);
      }
      return state;
    }
  }

  /** The state after one more entry. */
  public Governance with(Entry entry) {
    if (!KINDS.contains(entry.kind())) {
      return this;
    }
    Change change = new Change(this);
    if (KeyRules.fault(entry, this).isEmpty() && isApproved(entry.content())) {
      change.apply(entry);
    }
    return change.result(entry.sequence());
  }

  private boolean isApproved(Content content) {
    return !(content instanceof Content.Release release) || isApproved(release);
  }

  /** Whether a release names just the approvals that agree, and they are of two roles. */
  boolean isApproved(Content.Release release) {
    List<Long> agreeing =
        agreeing(release.protocol()).stream().map(Governance.Approved::sequence).toList();
    return agreeing.size() >= KeyRules.AGREE && agreeing.equals(release.approvals());
  }

  /** The lists of a state, to be changed. Used once. */
  private static final class Change {
    private String ledger;
    private final List<PublicKeyOf> keys;
    private final List<Content.KeyVoucher> vouchers;
    private final List<Approved> approvals;
    private final List<Released> releases;
    private final List<Content.Withdrawal> withdrawals;

    Change(Governance from) {
      ledger = from.ledger;
      keys = new ArrayList<>(from.keys);
      vouchers = new ArrayList<>(from.vouchers);
      approvals = new ArrayList<>(from.approvals);
      releases = new ArrayList<>(from.releases);
      withdrawals = new ArrayList<>(from.withdrawals);
    }

    void apply(Entry entry) {
      Content content = entry.content();
      if (content instanceof Content.Founding founding && ledger.isEmpty()) {
        ledger = founding.ledger();
        keys.addAll(founding.keys());
      } else if (content instanceof Content.KeyVoucher voucher) {
        vouch(voucher);
      } else if (content instanceof Content.KeyWithdrawal withdrawal) {
        keys.removeIf(key -> key.name().equals(withdrawal.key()));
      } else if (content instanceof Content.Approval approval) {
        approvals.add(new Approved(entry.sequence(), approval));
      } else if (content instanceof Content.Release release) {
        releases.add(new Released(entry.sequence(), release.protocol()));
        approvals.removeIf(a -> a.approval().protocol().isSameAs(release.protocol()));
      } else if (content instanceof Content.Withdrawal withdrawal) {
        withdrawals.add(withdrawal);
        approvals.removeIf(a -> a.approval().protocol().isSameAs(withdrawal.protocol()));
      }
    }

    private void vouch(Content.KeyVoucher voucher) {
      vouchers.add(voucher);
      Set<String> roles = new java.util.HashSet<>();
      vouchers.stream()
          .filter(given -> given.key().equals(voucher.key()))
          .filter(given -> keys.stream().anyMatch(k -> k.name().equals(given.signature().key())))
          .forEach(given -> roles.add(given.signature().role()));
      if (roles.size() >= KeyRules.AGREE) {
        keys.add(voucher.key());
        vouchers.removeIf(given -> given.key().equals(voucher.key()));
      }
    }

    Governance result(long upTo) {
      return new Governance(ledger, upTo, keys, vouchers, approvals, releases, withdrawals);
    }
  }
}
