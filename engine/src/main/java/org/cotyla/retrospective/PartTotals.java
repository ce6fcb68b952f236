package org.cotyla.retrospective;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.cotyla.audit.AuditTotals;

/**
 * What became of a part of the rows, as plain data that can be sent from machine to machine. Parts
 * merge in any order to the same whole.
 *
 * @param counts how many rows there were, and what became of them
 * @param totals the judged decisions added up
 * @param setAside the rows that were not judged, by their number
 */
public record PartTotals(RunCounts counts, AuditTotals totals, List<SetAside> setAside)
    implements Serializable {

  public PartTotals {
    setAside = List.copyOf(setAside);
  }

  /** What became of no row. */
  public static PartTotals none() {
    return new PartTotals(RunCounts.NONE, new AuditTotals(), List.of());
  }

  /** Both parts together. */
  public PartTotals merge(PartTotals other) {
    List<SetAside> both = new ArrayList<>(setAside);
    both.addAll(other.setAside);
    // The faults of one row stay in their order, since the sort is stable.
    both.sort(Comparator.comparingLong(SetAside::row));
    return new PartTotals(counts.plus(other.counts), totals.merge(other.totals), both);
  }
}
