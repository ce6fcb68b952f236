package org.cotyla.retrospective;

import java.util.List;
import java.util.Optional;
import org.cotyla.audit.AuditTotals;
import org.cotyla.protocol.Protocol;

/**
 * What a protocol would have said of past cases, held against what was done.
 *
 * @param protocol the protocol that judged
 * @param mapping what each column was taken for
 * @param counts how many rows there were, and what became of them
 * @param blank how many rows were blank and passed over
 * @param totals the judged decisions added up
 * @param comparison what another protocol judges otherwise
 */
public record RetrospectiveReport(
    Protocol protocol,
    ColumnMapping mapping,
    RunCounts counts,
    long blank,
    AuditTotals totals,
    Optional<Comparison> comparison) {

  /**
   * The same cases judged by another protocol.
   *
   * @param protocol the other protocol
   * @param unknown fields of the cases that it does not ask for, and that were left out for it
   * @param totals its judgements added up
   * @param changes what it judges otherwise
   */
  public record Comparison(
      Protocol protocol, List<String> unknown, AuditTotals totals, DraftChanges changes) {
    public Comparison {
      unknown = List.copyOf(unknown);
    }
  }
}
