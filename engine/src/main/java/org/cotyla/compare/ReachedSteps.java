package org.cotyla.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.ShownAs;
import org.cotyla.protocol.Step;

/**
 * The steps of the new protocol that can come to something else than in the old one, of those that
 * the first page of an answer hangs on: the edited ones and what follows from them. What is not
 * among them comes to the same in every case, by rows of the same ids. Immutable.
 */
final class ReachedSteps {

  /**
   * A step that an edit reaches.
   *
   * @param step the step, of the new protocol
   * @param alike whether it says the same of the names that it reads as in the old protocol
   * @param changed the rows in which it does not, when nothing else is edited
   * @param needs the names that it reads, without constants
   */
  record Reached(Step step, boolean alike, Optional<ChangedRows> changed, List<Symbol> needs) {}

  private final List<Reached> steps;

  private ReachedSteps(List<Reached> steps) {
    this.steps = List.copyOf(steps);
  }

  /**
   * @param constants names of the new protocol that are constants in both; what reads them counts
   *     as edited when they were, so that they are no steps of their own
   */
  static ReachedSteps of(
      Protocol young,
      Counterparts counterparts,
      WrittenAlike alike,
      FieldReadings readings,
      Set<Symbol> constants) {
    Set<Step> leading = leading(young);
    Set<Symbol> names = new HashSet<>(readings.unlike());
    Set<Step> found = Collections.newSetFromMap(new IdentityHashMap<>());
    List<Reached> steps = new ArrayList<>();
    for (Step step : young.steps()) {
      if (!leading.contains(step) || isConstant(step, constants)) {
        continue;
      }
      List<Symbol> needs =
          step.needs().stream().filter(symbol -> !constants.contains(symbol)).toList();
      boolean same = counterparts.sayTheSame(step, alike);
      boolean follows =
          step instanceof Ranking ranking
              ? ranking.voters().stream().anyMatch(found::contains)
              : needs.stream().anyMatch(names::contains);
      if (!same || follows) {
        Optional<ChangedRows> changed =
            step instanceof DecisionTable table && !same
                ? counterparts.of(table).flatMap(was -> alike.changedRows(was, table))
                : Optional.empty();
        steps.add(new Reached(step, same, changed, needs));
        found.add(step);
        names.addAll(step.gives());
      }
    }
    return new ReachedSteps(steps);
  }

  private static boolean isConstant(Step step, Set<Symbol> constants) {
    return step instanceof Calculation calculation && constants.contains(calculation.symbol());
  }

  /** The steps that anything on the first page hangs on. */
  private static Set<Step> leading(Protocol protocol) {
    Set<Step> leading = Collections.newSetFromMap(new IdentityHashMap<>());
    Set<Symbol> needed = new HashSet<>();
    List<Step> backwards = new ArrayList<>(protocol.steps());
    Collections.reverse(backwards);
    for (Step step : backwards) {
      boolean leads =
          step instanceof Ranking
              || (step instanceof DecisionTable table && isShown(table))
              || leading.contains(step)
              || step.gives().stream().anyMatch(needed::contains);
      if (leads) {
        leading.add(step);
        if (step instanceof Ranking ranking) {
          leading.addAll(ranking.voters());
        }
        needed.addAll(step.needs());
      }
    }
    return leading;
  }

  /** Whether the decision stands on the first page with a result of its own. */
  static boolean isShown(DecisionTable table) {
    return table.shownAs() == ShownAs.HEADLINE && !table.votes() && !table.hitPolicy().isList();
  }

  /** In order of need. */
  List<Reached> steps() {
    return steps;
  }
}
