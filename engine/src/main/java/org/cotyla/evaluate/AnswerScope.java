package org.cotyla.evaluate;

import java.util.HashMap;
import java.util.Map;
import org.cotyla.expression.Scope;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Datum;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.value.PossibleValues;

/** Every name of an answer with what it came to, so that further formulas can be worked out. */
public final class AnswerScope implements Scope {

  private final Map<Symbol, PossibleValues> values = new HashMap<>();

  private AnswerScope() {}

  public static AnswerScope of(Recommendation answer) {
    AnswerScope scope = new AnswerScope();
    for (Datum datum : answer.findings().data()) {
      scope.values.put(datum.field().symbol(), datum.value());
    }
    for (Calculation calculation : answer.protocol().calculations()) {
      scope.put(calculation.symbol(), answer.calculations().get(calculation.name()));
    }
    for (DecisionResult decision : answer.decisions()) {
      for (DecisionTable.Output output : decision.table().outputs()) {
        scope.put(output.symbol(), decision.outputs().get(output.symbol().name()));
      }
    }
    answer.rankings().forEach(ranking -> scope.put(ranking.ranking().first(), ranking.first()));
    return scope;
  }

  private void put(Symbol symbol, @org.jspecify.annotations.Nullable PossibleValues value) {
    if (value != null) {
      values.put(symbol, value);
    }
  }

  /** What the name came to; nothing when it is a list. */
  @Override
  public PossibleValues valueOf(Symbol symbol) {
    PossibleValues value = values.get(symbol);
    return value == null ? PossibleValues.nothing(symbol.type()) : value;
  }
}
