package org.cotyla.audit;

import java.util.List;
import java.util.Optional;

/**
 * What was chosen in one ranking, held against what was advised.
 *
 * @param ranking the ranking
 * @param chosen the option that was chosen
 * @param first the option in first place, when there was one
 * @param verdict how the chosen option stood
 * @param rows the ids of the rows that spoke for the first or against the chosen one
 */
public record Judgement(
    String ranking, String chosen, Optional<String> first, Verdict verdict, List<String> rows) {
  public Judgement {
    rows = List.copyOf(rows);
  }
}
