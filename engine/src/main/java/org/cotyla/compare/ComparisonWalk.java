package org.cotyla.compare;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.cotyla.compare.UnsteadyNames.Unsteady;
import org.cotyla.evaluate.Engine;
import org.cotyla.finite.Answer;
import org.cotyla.finite.Domain;
import org.cotyla.finite.Effort;
import org.cotyla.name.NameIndex;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Step;

/**
 * Goes through the steps of the new protocol in order of need. What says the same of names that are
 * the same needs no search; whatever else is searched, and its results are the same names again
 * once that is proven.
 */
final class ComparisonWalk {

  private final WalkState state;
  private final Supplier<List<Answer.Found>> knownLate;

  /**
   * @param known cases that differ, in which a difference is looked for before any search
   * @param knownLate cases that differ, in which is looked for what the search left open
   * @param onlyEdits whether it is enough to know of each edited decision that it differs, and
   *     nothing need be known of what only follows
   */
  ComparisonWalk(
      Engine before,
      Engine after,
      Effort effort,
      List<Answer.Found> known,
      Supplier<List<Answer.Found>> knownLate,
      boolean onlyEdits) {
    this.state = new WalkState(before, after, effort, known, onlyEdits);
    this.knownLate = knownLate;
  }

  ProtocolComparison run() {
    fields();
    DecisionWalk decisions = new DecisionWalk(state);
    RankingWalk rankings = new RankingWalk(state);
    for (Step step : state.young().protocol().steps()) {
      if (step instanceof Calculation calculation) {
        calculation(calculation);
      } else if (step instanceof DecisionTable table) {
        decisions.compare(table);
      } else if (step instanceof Ranking ranking) {
        rankings.compare(ranking);
      }
    }
    if (state.hasOpen()) {
      state.lookIn(state.samples().found());
    }
    // Waits for the late cases only where they may show something.
    if (state.hasOpen()) {
      state.lookIn(knownLate.get());
    }
    return state.comparison();
  }

  /** What a case states, and means the same to both, has one value. */
  private void fields() {
    NameIndex<Field> before = NameIndex.of(state.old().protocol().givenFields(), Field::name);
    state.young().protocol().givenFields().stream()
        .filter(is -> before.find(is.name()).filter(was -> Domain.isAlike(was, is)).isPresent())
        .forEach(state.same()::addGiven);
  }

  private void calculation(Calculation is) {
    Optional<Calculation> was =
        NameIndex.of(state.old().protocol().calculations(), Calculation::name).find(is.name());
    if (was.isEmpty() || (was.get().constant().isPresent() && is.constant().isPresent())) {
      return;
    }
    boolean alike = state.written().are(was.get(), is);
    Optional<Unsteady> reached = state.unsteady().reaching(is.needs());
    if (alike && reached.isEmpty()) {
      state.same().addWrittenAlike(is);
      return;
    }
    Set<String> causes = new LinkedHashSet<>();
    reached.ifPresent(by -> causes.addAll(by.causes()));
    if (!alike) {
      causes.add(is.name());
    }
    boolean comparable = reached.map(Unsteady::comparable).orElse(true);
    boolean directly = !alike || reached.map(Unsteady::directly).orElse(false);
    state.unsteady().mark(is.name(), new Unsteady(causes, directly, comparable));
  }
}
