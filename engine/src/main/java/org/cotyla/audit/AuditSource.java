package org.cotyla.audit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What was audited.
 *
 * @param title one line
 * @param from the first day that was asked for
 * @param to the last day, to which outcomes are followed as well
 * @param identity what pins it down, such as the digest of the ledger's last entry
 */
public record AuditSource(
    String title, Optional<LocalDate> from, Optional<LocalDate> to, List<Fact> identity) {
  public AuditSource {
    identity = List.copyOf(identity);
  }

  /** A name and its value. */
  public record Fact(String name, String value) {}
}
