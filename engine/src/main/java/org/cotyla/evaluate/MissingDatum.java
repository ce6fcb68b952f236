package org.cotyla.evaluate;

import java.util.List;
import org.cotyla.finding.Datum;

/**
 * A datum that is missing, or only partly known.
 *
 * @param datum the datum
 * @param mayChangeFirst the rankings whose first place it may change
 * @param mayChange the decisions whose result it may change, in order of need
 * @param mayChangePoints the rankings in which it may change some option's points or rule it out
 */
public record MissingDatum(
    Datum datum,
    List<String> mayChangeFirst,
    List<String> mayChange,
    List<String> mayChangePoints) {

  public MissingDatum {
    mayChangeFirst = List.copyOf(mayChangeFirst);
    mayChange = List.copyOf(mayChange);
    mayChangePoints = List.copyOf(mayChangePoints);
  }

  /** Whether it may change anything; false is a proof. */
  public boolean mayMatter() {
    return !mayChangeFirst.isEmpty() || !mayChange.isEmpty() || !mayChangePoints.isEmpty();
  }
}
