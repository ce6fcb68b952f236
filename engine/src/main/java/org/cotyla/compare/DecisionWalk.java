package org.cotyla.compare;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cotyla.compare.UnsteadyNames.Unsteady;
import org.cotyla.protocol.DecisionTable;

/** Compares one decision after another, each with what is known of those before it. */
final class DecisionWalk {

  private final WalkState state;

  DecisionWalk(WalkState state) {
    this.state = state;
  }

  void compare(DecisionTable table) {
    Optional<DecisionTable> was = state.pairs().oldOf(table);
    DecisionComparison found =
        was.map(before -> decision(before, table))
            .orElseGet(() -> DecisionComparison.only(Optional.empty(), Optional.of(table)));
    state.put(table, found);
    if (!found.verdict().isSame()) {
      boolean comparable = found.verdict() != Verdict.INCOMPARABLE;
      Set<String> causes =
          found.edited() ? Set.of(table.name()) : new LinkedHashSet<>(found.followsFrom());
      table
          .gives()
          .forEach(
              output ->
                  state.unsteady().mark(output.name(), new Unsteady(causes, false, comparable)));
    }
  }

  private DecisionComparison decision(DecisionTable before, DecisionTable after) {
    boolean alike = state.written().are(before, after);
    Optional<Unsteady> reached = state.reached(before, after);
    if (alike && reached.isEmpty() && state.sameStages()) {
      state.same().addWrittenAlike(after);
      return DecisionComparison.same(before, after);
    }
    boolean edited = !alike || reached.map(Unsteady::directly).orElse(false);
    List<String> causes = reached.map(by -> List.copyOf(by.causes())).orElse(List.of());
    if (!state.sameStages()) {
      return DecisionComparison.of(
          before,
          after,
          Verdict.INCOMPARABLE,
          edited,
          causes,
          Optional.of("the two protocols have other stages"));
    }
    if (reached.filter(by -> !by.comparable()).isPresent()) {
      return DecisionComparison.of(
          before,
          after,
          Verdict.INCOMPARABLE,
          edited,
          causes,
          Optional.of("it hangs on something that the two protocols mean otherwise"));
    }
    if (state.onlyEdits() && !edited) {
      return DecisionComparison.of(
          before, after, Verdict.UNDECIDED, false, causes, Optional.of(WalkState.NOT_ASKED));
    }
    DecisionSearch search =
        new DecisionSearch(
            before,
            after,
            state.old().unsteady(state.unsteady().keys()),
            state.young().unsteady(state.unsteady().keys()),
            edited,
            !state.onlyEdits(),
            causes);
    Optional<DecisionComparison> seen =
        edited && !state.onlyEdits() ? Optional.empty() : search.seenIn(state.samples().cases());
    if (seen.isPresent()) {
      return seen.get();
    }
    Questions questions = state.questions(edited ? state.effort() : state.effortDownstream());
    DecisionComparison found = search.run(questions);
    boolean neverTorn =
        Contradictions.of(before, state.old()).isEmpty()
            && Contradictions.of(after, state.young()).isEmpty();
    if (found.verdict().isSame() && neverTorn && questions.contradictions().isEmpty()) {
      state.same().addProven(after);
    }
    if (found.verdict() == Verdict.UNDECIDED && !edited) {
      state.leaveOpen(after, search);
    }
    found.regions().forEach(region -> state.samples().add(region.example()));
    return found;
  }
}
