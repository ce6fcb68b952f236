package org.cotyla.cli.text;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Step;

/** Tells the decisions that follow from what a ranking puts first from those that lead to it. */
public final class FollowOn {

  private final Map<Symbol, Step> givers = new HashMap<>();

  public FollowOn(Protocol protocol) {
    protocol.steps().forEach(step -> step.gives().forEach(symbol -> givers.put(symbol, step)));
  }

  public boolean followsFromRanking(DecisionTable table) {
    Set<Step> seen = new HashSet<>();
    Deque<Step> open = new ArrayDeque<>();
    open.add(table);
    while (!open.isEmpty()) {
      for (Symbol need : open.remove().needs()) {
        Step giver = givers.get(need);
        if (giver instanceof Ranking) {
          return true;
        }
        if (giver != null && seen.add(giver)) {
          open.add(giver);
        }
      }
    }
    return false;
  }
}
