package org.cotyla.evaluate;

import java.util.Arrays;
import java.util.BitSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Step;

/** The steps of a protocol in order of need, with what gives each name. Immutable. */
final class Plan {

  private static final int NONE = -1;

  private final List<Step> steps;
  private final Symbol[][] needs;
  private final int[] givers;
  private final Map<Step, Integer> places = new IdentityHashMap<>();
  private final Map<DecisionTable, DecisionStep> decisions = new IdentityHashMap<>();

  Plan(Protocol protocol) {
    this.steps = protocol.steps();
    this.needs = new Symbol[steps.size()][];
    this.givers = new int[protocol.vocabulary().symbols().size()];
    Arrays.fill(givers, NONE);
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      places.put(step, i);
      // A ranking needs what its voters came to and nothing else.
      needs[i] = step instanceof Ranking ? new Symbol[0] : step.needs().toArray(Symbol[]::new);
      for (Symbol symbol : step.gives()) {
        givers[symbol.index()] = i;
      }
    }
    for (int i = 0; i < protocol.decisions().size(); i++) {
      DecisionTable table = protocol.decisions().get(i);
      decisions.put(table, new DecisionStep(table, i));
    }
  }

  List<Step> steps() {
    return steps;
  }

  /** The names that the step at the place reads; a ranking hears its voters instead. */
  Symbol[] needs(int place) {
    return needs[place];
  }

  int place(Step step) {
    return Optional.ofNullable(places.get(step))
        .orElseThrow(
            () ->
                new IllegalStateException(
                    "`" + step.name() + "` is not of this engine's protocol"));
  }

  DecisionStep decision(DecisionTable table) {
    return Optional.ofNullable(decisions.get(table)).orElseThrow();
  }

  /** The step that gives the name. */
  int giver(Symbol symbol) {
    int giver = givers[symbol.index()];
    if (giver == NONE) {
      throw new IllegalStateException("nothing gives `" + symbol.name() + "`");
    }
    return giver;
  }

  /** The places of a step and of all that must be worked out before it, of what is not known. */
  BitSet wanted(int place, Evaluation known) {
    BitSet wanted = new BitSet();
    wanted.set(place);
    for (int i = place; i >= 0; i = wanted.previousSetBit(i - 1)) {
      for (Symbol symbol : needs[i]) {
        if (!known.has(symbol)) {
          wanted.set(giver(symbol));
        }
      }
      if (steps.get(i) instanceof Ranking ranking) {
        for (DecisionTable voter : ranking.voters()) {
          if (!known.has(voter)) {
            wanted.set(place(voter));
          }
        }
      }
    }
    return wanted;
  }
}
