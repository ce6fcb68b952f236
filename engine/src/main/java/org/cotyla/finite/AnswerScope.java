package org.cotyla.finite;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Scope;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Datum;
import org.cotyla.value.PossibleValues;

/** What each name came to in an answer. A list, which no cell can read, is nothing here. */
final class AnswerScope implements Scope {

  private final Map<String, PossibleValues> values = new HashMap<>();

  AnswerScope(Recommendation answer) {
    values.putAll(answer.calculations());
    for (Datum datum : answer.findings().data()) {
      values.put(datum.field().name(), datum.value());
    }
    for (DecisionResult decision : answer.decisions()) {
      values.putAll(decision.outputs());
    }
    for (RankingResult ranking : answer.rankings()) {
      values.put(ranking.ranking().first().name(), ranking.first());
    }
  }

  @Override
  public PossibleValues valueOf(Symbol symbol) {
    return Optional.ofNullable(values.get(symbol.name()))
        .orElseGet(() -> PossibleValues.nothing(symbol.type()));
  }
}
