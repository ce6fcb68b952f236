package org.cotyla.compare;

import java.util.List;
import java.util.Optional;
import org.cotyla.finite.Answer;
import org.cotyla.protocol.DecisionTable;

/**
 * One decision in two protocols.
 *
 * @param before the decision in the old protocol, when that has it
 * @param after the decision in the new protocol
 * @param verdict whether it gives the same
 * @param edited whether its own table, or a constant or calculation that it reads, says something
 *     else; otherwise it can only differ by what it follows from
 * @param followsFrom what was edited before it and reaches it, by name
 * @param regions where it gives something else, when it was edited and that was asked
 * @param more whether there are more regions than are listed
 * @param example a case in which it differs, when no regions were asked for
 * @param note what else must be said, such as why it is undecided
 */
public record DecisionComparison(
    Optional<DecisionTable> before,
    Optional<DecisionTable> after,
    Verdict verdict,
    boolean edited,
    List<String> followsFrom,
    List<Region> regions,
    boolean more,
    Optional<Answer.Found> example,
    Optional<String> note) {

  public DecisionComparison {
    followsFrom = List.copyOf(followsFrom);
    regions = List.copyOf(regions);
  }

  /** The decision's name, as the new protocol has it. */
  public String name() {
    return after.or(() -> before).map(DecisionTable::name).orElse("");
  }

  static DecisionComparison same(DecisionTable before, DecisionTable after) {
    return of(before, after, Verdict.SAME, false, List.of(), Optional.empty());
  }

  static DecisionComparison of(
      DecisionTable before,
      DecisionTable after,
      Verdict verdict,
      boolean edited,
      List<String> followsFrom,
      Optional<String> note) {
    return new DecisionComparison(
        Optional.of(before),
        Optional.of(after),
        verdict,
        edited,
        followsFrom,
        List.of(),
        false,
        Optional.empty(),
        note);
  }

  static DecisionComparison only(Optional<DecisionTable> before, Optional<DecisionTable> after) {
    Verdict verdict = before.isPresent() ? Verdict.REMOVED : Verdict.ADDED;
    return new DecisionComparison(
        before,
        after,
        verdict,
        true,
        List.of(),
        List.of(),
        false,
        Optional.empty(),
        Optional.empty());
  }
}
