package org.cotyla.testcases.faults;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Effect;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Vote;

/** What decisions come to, whichever rows say so. */
final class Results {

  private Results() {}

  static boolean differ(Recommendation was, Recommendation is) {
    return is.decisions().stream()
        .anyMatch(
            decision ->
                was.decision(decision.table().name())
                    .filter(old -> !of(was, old.table()).equals(of(is, decision.table())))
                    .isPresent());
  }

  static Object of(Recommendation answer, DecisionTable table) {
    DecisionResult result = answer.decision(table.name()).orElseThrow();
    if (!table.votes() && !table.hitPolicy().isList()) {
      return result.outputs();
    }
    return table.votes() ? votes(result) : entries(result);
  }

  private static Set<Object> entries(DecisionResult result) {
    Set<Object> entries = new HashSet<>();
    result.counting().forEach(firing -> entries.add(firing.results()));
    return entries;
  }

  /** For each option its points, however many rows give them, and whether it is ruled out. */
  private static Map<String, Object> votes(DecisionResult result) {
    Stream<Vote> cast = result.counting().stream().flatMap(firing -> firing.row().vote().stream());
    List<Vote> each =
        (result.table().hitPolicy() == HitPolicy.ANY ? cast.distinct() : cast).toList();
    Map<String, Object> votes = new HashMap<>();
    for (Vote vote : each) {
      if (vote.effect() == Effect.RULE_OUT) {
        votes.put(vote.option() + " ruled out", true);
      } else {
        BigDecimal points = vote.effect() == Effect.OPPOSE ? vote.points().negate() : vote.points();
        votes.merge(vote.option(), points, (a, b) -> ((BigDecimal) a).add((BigDecimal) b));
      }
    }
    votes.values().removeIf(value -> value instanceof BigDecimal sum && sum.signum() == 0);
    return votes;
  }
}
