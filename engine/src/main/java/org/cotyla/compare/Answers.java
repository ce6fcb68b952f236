package org.cotyla.compare;

import java.util.Optional;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Datum;
import org.cotyla.value.PossibleValues;

/** What a name came to in an answer. */
final class Answers {

  private Answers() {}

  static PossibleValues value(Recommendation answer, Symbol symbol) {
    PossibleValues calculated = answer.calculations().get(symbol.name());
    if (calculated != null) {
      return calculated;
    }
    Optional<PossibleValues> given =
        answer.findings().data().stream()
            .filter(datum -> datum.field().symbol().equals(symbol))
            .map(Datum::value)
            .findFirst();
    return given
        .or(() -> answer.value(symbol.name()))
        .or(
            () ->
                answer.rankings().stream()
                    .filter(ranking -> ranking.ranking().first().equals(symbol))
                    .map(ranking -> ranking.first())
                    .findFirst())
        .orElseGet(() -> PossibleValues.nothing(symbol.type()));
  }
}
