package org.cotyla.evaluate;

import java.util.Optional;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Datum;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Ranking;
import org.cotyla.value.PossibleValues;

/** Every name of an answer with what it came to, so that further formulas can be worked out. */
public final class AnswerScope implements Results {

  private final Recommendation answer;

  private AnswerScope(Recommendation answer) {
    this.answer = answer;
  }

  public static AnswerScope of(Recommendation answer) {
    return new AnswerScope(answer);
  }

  /** What the name came to; nothing when it is a list. */
  @Override
  public PossibleValues valueOf(Symbol symbol) {
    return stated(symbol)
        .or(() -> Optional.ofNullable(answer.calculations().get(symbol.name())))
        .or(() -> answer.value(symbol.name()))
        .or(() -> first(symbol))
        .filter(value -> value.type() == symbol.type())
        .orElseGet(() -> PossibleValues.nothing(symbol.type()));
  }

  @Override
  public DecisionResult decision(DecisionTable table) {
    return answer.decisions().stream()
        .filter(decision -> decision.table() == table)
        .findFirst()
        .orElseThrow();
  }

  @Override
  public RankingResult ranking(Ranking ranking) {
    return answer.ranking(ranking.name()).orElseThrow();
  }

  private Optional<PossibleValues> stated(Symbol symbol) {
    for (Datum datum : answer.findings().data()) {
      Symbol field = datum.field().symbol();
      if (field.index() == symbol.index() && field.name().equals(symbol.name())) {
        return Optional.of(datum.value());
      }
    }
    return Optional.empty();
  }

  private Optional<PossibleValues> first(Symbol symbol) {
    return answer.rankings().stream()
        .filter(ranking -> ranking.ranking().first().equals(symbol))
        .map(RankingResult::first)
        .findFirst();
  }
}
