package org.cotyla.protocol;

import java.util.List;
import org.cotyla.issue.CellRef;

/**
 * Policy that every answer has to keep: whenever the tests hold, the demand must be met. It is
 * checked and never changes an answer.
 *
 * @param id unique among safeguards and rows, and never used again
 * @param tests what must hold for the demand to apply; none means in every case
 * @param demand what must then be so
 * @param because its reason in one sentence
 * @param sources keys of sources
 * @param at the cell of its id
 */
public record Safeguard(
    String id,
    List<Condition> tests,
    Demand demand,
    String because,
    List<String> sources,
    CellRef at) {

  /** A name and the test that its value must meet; tests of anything are left out. */
  public record Condition(DecisionTable.Input input, Row.Test test) {}

  public Safeguard {
    tests = List.copyOf(tests);
    sources = List.copyOf(sources);
  }
}
