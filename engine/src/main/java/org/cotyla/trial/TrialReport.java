package org.cotyla.trial;

import java.util.List;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Row;

/**
 * What came of all cases that were tried with a protocol.
 *
 * @param protocol the protocol
 * @param protocolDigest SHA-256 over its meaning
 * @param tried every case, in the order of trying
 * @param unexercised rows that count as certain in none of the cases
 */
public record TrialReport(
    Protocol protocol, String protocolDigest, List<Tried> tried, List<Unexercised> unexercised) {

  /** A row that counts as certain in no case, and its decision. */
  public record Unexercised(DecisionTable decision, Row row) {}

  public TrialReport {
    tried = List.copyOf(tried);
    unexercised = List.copyOf(unexercised);
  }

  public boolean allPassed() {
    return tried.stream().allMatch(Tried::passed);
  }

  public List<Tried> failed() {
    return tried.stream().filter(one -> one.outcome() instanceof Outcome.Failed).toList();
  }

  public List<Tried> refused() {
    return tried.stream().filter(one -> one.outcome() instanceof Outcome.Refused).toList();
  }
}
