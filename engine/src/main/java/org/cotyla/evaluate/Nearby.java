package org.cotyla.evaluate;

import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Datum;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Ranking;
import org.cotyla.value.PossibleValues;

/**
 * The answer to a case that is much like the one at hand: a step that reads the same in both comes
 * to the same. Immutable.
 */
public final class Nearby {

  private final State state;
  private final Map<DecisionTable, DecisionResult> decisions = new IdentityHashMap<>();
  private final Map<Ranking, RankingResult> rankings = new IdentityHashMap<>();

  private Nearby(Recommendation answer) {
    this.state = new State(answer.protocol().vocabulary().symbols().size());
    for (Datum datum : answer.findings().data()) {
      state.set(datum.field().symbol(), datum.value());
    }
    for (Calculation calculation : answer.protocol().calculations()) {
      PossibleValues value = answer.calculations().get(calculation.name());
      if (value != null) {
        state.set(calculation.symbol(), value);
      }
    }
    for (DecisionResult result : answer.decisions()) {
      result.table().outputs().forEach(output -> result.value(output, state::set));
      decisions.put(result.table(), result);
    }
    for (RankingResult result : answer.rankings()) {
      state.set(result.ranking().first(), result.first());
      rankings.put(result.ranking(), result);
    }
  }

  public static Nearby of(Recommendation answer) {
    return new Nearby(answer);
  }

  /** Whether all the names have the same values in both cases. */
  boolean isSame(Symbol[] names, State here) {
    for (Symbol name : names) {
      if (!state.has(name) || !isSame(here.valueOf(name), state.valueOf(name))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isSame(PossibleValues one, PossibleValues other) {
    return one == other || one.equals(other);
  }

  /** What the name comes to. */
  Optional<PossibleValues> value(Symbol symbol) {
    return state.has(symbol) ? Optional.of(state.valueOf(symbol)) : Optional.empty();
  }

  Optional<DecisionResult> decision(DecisionTable table) {
    return Optional.ofNullable(decisions.get(table));
  }

  /** What the ranking comes to, when its voters came to these very results. */
  Optional<RankingResult> ranking(Ranking ranking, Map<DecisionTable, DecisionResult> here) {
    boolean same =
        ranking.voters().stream().allMatch(voter -> here.get(voter) == decisions.get(voter));
    return Optional.ofNullable(same ? rankings.get(ranking) : null);
  }
}
