package org.cotyla.ledger;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A protocol as a ledger knows it.
 *
 * @param identifier its short stable name
 * @param version its version
 * @param digest SHA-256 over its meaning
 * @param workbook SHA-256 over the file's bytes, which are kept
 * @param effectiveFrom the first day it is meant to be in force
 * @param reviewDue the day by which it must be reviewed
 */
public record ProtocolVersion(
    String identifier,
    String version,
    String digest,
    String workbook,
    Optional<LocalDate> effectiveFrom,
    Optional<LocalDate> reviewDue) {

  /** Whether both mean the same protocol, however the file was saved. */
  public boolean isSameAs(ProtocolVersion other) {
    return identifier.equals(other.identifier)
        && version.equals(other.version)
        && digest.equals(other.digest);
  }
}
