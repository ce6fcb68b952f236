package org.cotyla.ledgeraudit;

import java.time.LocalDate;
import org.cotyla.ledger.Advice;
import org.cotyla.ledger.Content;
import org.cotyla.ledger.Life;
import org.cotyla.ledger.ProtocolVersion;

/** A recommendation of a ledger, as far as an audit needs it. */
record Advised(
    long entry,
    LocalDate day,
    ProtocolVersion protocol,
    Life life,
    boolean reviewOverdue,
    boolean isReplan,
    Advice advice) {

  static Advised of(long entry, Content.Recommendation content) {
    return new Advised(
        entry,
        content.day(),
        content.protocol(),
        content.life(),
        content.reviewOverdue(),
        content.plan().isPresent(),
        content.advice());
  }
}
