package org.cotyla.evaluate;

import java.util.List;
import org.cotyla.finding.Datum;

/**
 * A datum that is missing, or only partly known.
 *
 * @param datum the datum
 * @param mayChangeFirst the rankings whose first place it may change
 * @param mayChange the decisions whose result it may change, in the order of the workbook; when
 *     this and the first list are empty, it cannot change anything in this case
 */
public record MissingDatum(Datum datum, List<String> mayChangeFirst, List<String> mayChange) {
  public MissingDatum {
    mayChangeFirst = List.copyOf(mayChangeFirst);
    mayChange = List.copyOf(mayChange);
  }

  /** Whether it may change anything; false is a proof. */
  public boolean mayMatter() {
    return !mayChangeFirst.isEmpty() || !mayChange.isEmpty();
  }
}
