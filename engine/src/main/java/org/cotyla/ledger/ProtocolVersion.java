package org.cotyla.ledger;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A protocol as a ledger knows it.
 *
 * @param identifier its short stable name
 * @param version its version
 * @param digest SHA-256 over its meaning
 * @param lists SHA-256 over the reasons and outcomes that decisions are recorded by; no answer
 *     hangs on them, so they are not in the digest, but figures over decisions do
 * @param workbook SHA-256 over the file's bytes, which are kept
 * @param effectiveFrom the first day it is meant to be in force
 * @param reviewDue the day by which it must be reviewed
 */
public record ProtocolVersion(
    String identifier,
    String version,
    String digest,
    String lists,
    String workbook,
    Optional<LocalDate> effectiveFrom,
    Optional<LocalDate> reviewDue) {

  /** Whether both mean the same protocol, however the file was saved. */
  public boolean isSameAs(ProtocolVersion other) {
    return identifier.equals(other.identifier)
        && version.equals(other.version)
        && isOfSameContent(other);
  }

  /** Whether both say the same, whatever they are called. */
  boolean isOfSameContent(ProtocolVersion other) {
    return digest.equals(other.digest) && lists.equals(other.lists);
  }
}
