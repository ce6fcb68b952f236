package org.cotyla.ledgeraudit;

import java.time.LocalDate;
import java.util.List;
import org.cotyla.ledger.Content;
import org.cotyla.ledger.Governance;
import org.cotyla.ledger.Life;
import org.cotyla.ledger.ProtocolVersion;

/** Where a protocol was in its life when a decision leaned on it. */
final class Standing {

  private Standing() {}

  /**
   * In force only when it was so both at the recommendation and on the day of the decision. What
   * was withdrawn later was not withdrawn then.
   */
  static Life of(Advised advised, LocalDate day, Governance known) {
    return advised.life() == Life.IN_FORCE ? life(advised.protocol(), day, known) : advised.life();
  }

  private static Life life(ProtocolVersion protocol, LocalDate day, Governance known) {
    List<Content.Withdrawal> byThen =
        known.withdrawals().stream().filter(withdrawal -> !withdrawal.day().isAfter(day)).toList();
    return new Governance(
            known.ledger(),
            known.upTo(),
            known.keys(),
            known.vouchers(),
            known.approvals(),
            known.releases(),
            byThen)
        .life(protocol, day);
  }
}
