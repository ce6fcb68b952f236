package org.cotyla.audit;

import java.util.List;

/**
 * A row, and how often it was departed from.
 *
 * @param departed of the decisions in which it spoke for the first option or against the chosen
 *     one, how many did not choose the first
 * @param reasons the reasons given for that, the most frequent first
 */
public record RowDepartures(
    String ranking, String row, Proportion departed, List<NamedCount> reasons) {
  public RowDepartures {
    reasons = List.copyOf(reasons);
  }
}
