package org.cotyla.expression;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.cotyla.expression.RangedFunction.Shape;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Names of functions that begin like names of fields")
class FunctionNamesTest {

  private static final Symbol DEPTH = new Symbol("depth", 0, ValueType.NUMBER, List.of());
  private static final Symbol LONGER = new Symbol("depth from rim", 1, ValueType.NUMBER, List.of());

  private static final CellParser PARSER =
      new CellParser(
          new Vocabulary(
              List.of(DEPTH, LONGER), List.of(constant("depth", 10), constant("depth from", 20))),
          Dialect.KIND);

  @ParameterizedTest(name = "`{0}` is {1}")
  @DisplayName("The bracket tells a function, even where a field has the name or its start")
  @CsvSource({
    "depth, 1",
    "depth from rim, 2",
    "depth(0), 10",
    "depth from(0), 20",
    "depth from (depth), 20",
    "depth + depth(0), 11",
    "depth from rim + depth from(depth from rim), 22",
    "depth from(0) * depth, 20"
  })
  void bracketTells(String cell, String expected) throws ExpressionException {
    Expression formula = PARSER.formula(cell);
    PossibleValues result =
        formula.evaluate(symbol -> PossibleValues.of(Value.of(symbol.equals(DEPTH) ? 1 : 2)));
    assertThat(result.plain()).isEqualTo(expected);
    assertThat(PARSER.formula(formula.print())).isEqualTo(formula);
  }

  private static FormulaFunction constant(String name, long result) {
    RangedArgument any = RangedArgument.from(-1000, 1000);
    return new RangedFunction(
        name, List.of(any), any.allowed(), Shape.ANY, n -> OptionalDouble.of(result));
  }
}
