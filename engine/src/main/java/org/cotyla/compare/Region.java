package org.cotyla.compare;

import java.util.List;
import java.util.stream.Collectors;
import org.cotyla.finite.Answer;

/**
 * Findings in which a decision gives something else.
 *
 * @param conditions what the findings must be; empty when they can be anything
 * @param whole whether the difference is proven for every case of which the conditions are true;
 *     otherwise it is that of the example
 * @param difference how it differs
 * @param example a case in which it does, run by both engines
 */
public record Region(
    List<Condition> conditions, boolean whole, Difference difference, Answer.Found example) {

  public Region {
    conditions = List.copyOf(conditions);
  }

  /** The conditions in words. */
  public String when() {
    return conditions.isEmpty()
        ? whole ? "in every case" : "in some cases"
        : conditions.stream().map(this::words).collect(Collectors.joining(", and "));
  }

  /** What both protocols ask with another outcome is said of each. */
  private String words(Condition condition) {
    boolean both =
        condition instanceof Condition.Tested tested
            && conditions.stream().anyMatch(tested::isAlsoAskedBy);
    return condition.words()
        + (both && condition instanceof Condition.Tested one
            ? one.side() == 0 ? " before" : " now"
            : "");
  }

  /** As people read it: what the findings are, and what differs then. */
  public String sentence() {
    return (whole || conditions.isEmpty() ? "" : "for example ")
        + when()
        + ": "
        + difference.words();
  }
}
