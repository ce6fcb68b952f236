package org.cotyla.finite;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.cotyla.expression.CellParser;
import org.cotyla.expression.Dialect;
import org.cotyla.expression.ExpressionException;
import org.cotyla.expression.Scope;
import org.cotyla.expression.Symbol;
import org.cotyla.expression.Vocabulary;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A value that stands for a set")
class RepresentativeTest {

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "[0..10], [20..30]",
        "not(0)",
        "(0..1)",
        "< -2000000",
        "> 2000000",
        "(0.1..0.1000001), 7",
        "not([-1000000..1000000])"
      })
  @DisplayName("lies in it, though the set has gaps or open ends")
  void numbers(String cell) throws ExpressionException {
    liesIn(set(cell, ValueType.NUMBER));
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"not(\"other\")", "not(\"other\", \"a\", \"m\", \"z\", \"\", \"zzzz\")"})
  @DisplayName("lies in it, though the usual words do not")
  void texts(String cell) throws ExpressionException {
    liesIn(set(cell, ValueType.TEXT));
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "not(date(\"2026-01-01\"))",
        "[date(\"2026-01-01\")..date(\"2026-01-03\")], > date(\"2027-01-01\")",
        "> date(\"2026-01-01\")"
      })
  @DisplayName("lies in it, though days are left out")
  void dates(String cell) throws ExpressionException {
    liesIn(set(cell, ValueType.DATE));
  }

  private static void liesIn(ValueSet set) {
    assertThat(set.contains(Representative.of(set))).as("%s", Representative.of(set)).isTrue();
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < 200; i++) {
      var value = Representative.sample(set, random);
      assertThat(set.contains(value)).as("%s", value).isTrue();
    }
  }

  private static ValueSet set(String cell, ValueType type) throws ExpressionException {
    CellParser parser = new CellParser(new Vocabulary(List.of(), List.of()), Dialect.KIND);
    Optional<ValueSet> set =
        parser.test(cell, new Symbol("it", 0, type, List.of())).region(type, Scope.empty());
    return set.orElseThrow();
  }
}
