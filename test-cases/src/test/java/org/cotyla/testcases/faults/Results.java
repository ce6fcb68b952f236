package org.cotyla.testcases.faults;

import java.util.List;
import java.util.Set;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.HitPolicy;

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
    List<String> entries =
        result.counting().stream()
            .map(firing -> firing.row().vote() + " " + firing.results())
            .sorted()
            .toList();
    return table.hitPolicy() == HitPolicy.ANY ? Set.copyOf(entries) : entries;
  }
}
