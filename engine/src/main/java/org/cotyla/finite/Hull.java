package org.cotyla.finite;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.evaluate.AnswerScope;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;

/**
 * What evaluation over possible values already knows of all cases of a domain: what each name can
 * be at most, and which rows always or never match. Whatever it rules out needs no solver.
 */
final class Hull {

  private final List<AnswerScope> scopes = new ArrayList<>();
  private final List<Recommendation> answers = new ArrayList<>();
  private final Map<Row, Truth> rows = new IdentityHashMap<>();

  Hull(Engine engine, Domain domain) {
    for (int stage : domain.stages()) {
      Recommendation answer = engine.decide(domain.findings(engine.protocol(), stage, Map.of()));
      answers.add(answer);
      scopes.add(AnswerScope.of(answer));
    }
    Map<Row, Integer> certain = new IdentityHashMap<>();
    for (Recommendation answer : answers) {
      for (Firing firing : answer.firings()) {
        certain.merge(firing.row(), firing.certain() ? 1 : 0, Integer::sum);
      }
    }
    certain.forEach(
        (row, times) -> rows.put(row, times == answers.size() ? Truth.TRUE : Truth.OPEN));
  }

  PossibleValues of(Symbol symbol) {
    return scopes.stream()
        .map(scope -> scope.valueOf(symbol))
        .reduce(PossibleValues::union)
        .orElseThrow();
  }

  /** Whether the row matches in every case, in none, or may. */
  Truth matches(Row row) {
    return rows.getOrDefault(row, Truth.FALSE);
  }

  /** Whether the option can come first in some case, as far as is known. */
  boolean canBeFirst(String ranking, String option) {
    return answers.stream()
        .flatMap(answer -> answer.ranking(ranking).stream())
        .flatMap(result -> result.option(option).stream())
        .anyMatch(ranked -> ranked.canBeFirst());
  }
}
