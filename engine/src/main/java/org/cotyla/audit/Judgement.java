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
 * @param ruledOutBy the ids of the rows that ruled the chosen option out
 * @param options every option of the ranking, chosen or not
 */
public record Judgement(
    String ranking,
    String chosen,
    Optional<String> first,
    Verdict verdict,
    List<String> rows,
    List<String> ruledOutBy,
    List<String> options) {
  public Judgement {
    rows = List.copyOf(rows);
    ruledOutBy = List.copyOf(ruledOutBy);
    options = List.copyOf(options);
  }
}
