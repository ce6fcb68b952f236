package org.cotyla.cli.text;

import java.time.LocalDate;
import java.util.Optional;
import org.cotyla.ledger.Governance;
import org.cotyla.ledger.Life;
import org.cotyla.ledger.ProtocolVersion;

/**
 * Where a protocol stands by a ledger, on a day.
 *
 * @param life where it is in its life
 * @param from the day from which its release is in force
 * @param inForce the version that is in force instead
 * @param entry the entry under which the answer is recorded
 */
public record LedgerStanding(
    Life life, Optional<LocalDate> from, Optional<String> inForce, long entry) {

  public static LedgerStanding of(
      Governance governance, ProtocolVersion version, LocalDate day, long entry) {
    Life life = governance.life(version, day);
    return new LedgerStanding(
        life,
        governance.lastRelease(version).flatMap(release -> release.protocol().effectiveFrom()),
        life == Life.IN_FORCE
            ? Optional.empty()
            : governance
                .inForce(version.identifier(), day)
                .map(release -> release.protocol().version()),
        entry);
  }
}
