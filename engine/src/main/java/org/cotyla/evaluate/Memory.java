package org.cotyla.evaluate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.cotyla.expression.Scope;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.value.PossibleValues;

/**
 * What one decision came to for values that it met before: it hangs on nothing else, so there is no
 * need to work it out again. Safe to share between threads.
 */
final class Memory {

  /** Enough for what comes back; a decision that meets new values each time forgets the old. */
  private static final int MOST = 2_000;

  private final List<Symbol> needs;
  private final Map<List<PossibleValues>, DecisionResult> results = new ConcurrentHashMap<>();

  Memory(DecisionTable table) {
    this.needs = List.copyOf(table.needs());
  }

  /** What the decision reads, as it stands. */
  List<PossibleValues> met(Scope values) {
    List<PossibleValues> met = new ArrayList<>(needs.size());
    needs.forEach(symbol -> met.add(values.valueOf(symbol)));
    return met;
  }

  Optional<DecisionResult> recall(List<PossibleValues> met) {
    return Optional.ofNullable(results.get(met));
  }

  void keep(List<PossibleValues> met, DecisionResult result) {
    if (results.size() >= MOST) {
      results.clear();
    }
    results.put(met, result);
  }
}
