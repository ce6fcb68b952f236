package org.cotyla.expression;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import org.assertj.core.api.Assertions;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ArithmeticTest {

  private static PossibleValues evaluate(String formula, PossibleValues size)
      throws ExpressionException {
    return SampleNames.kind().formula(formula).evaluate(SampleNames.only(SampleNames.SIZE, size));
  }

  private static String plain(String formula) throws ExpressionException {
    return evaluate(formula, PossibleValues.of(Value.of(2))).plain();
  }

  private static PossibleValues range(long low, long high) {
    return PossibleValues.of(
        ValueSet.between(ValueType.NUMBER, Value.of(low), true, Value.of(high), true));
  }

  @ParameterizedTest(name = "{0} = {1}")
  @DisplayName("Arithmetic is decimal, with 34 digits, rounded half to even")
  @CsvSource(
      delimiter = '|',
      value = {
        "0.1 + 0.2 | 0.3",
        "1 / 3 | 0.3333333333333333333333333333333333",
        "2 / 3 | 0.6666666666666666666666666666666667",
        "1000000000000000000000000000000000 + 0.5 | 1000000000000000000000000000000000",
        "1000000000000000000000000000000001 + 0.5 | 1000000000000000000000000000000002",
        "9999999999999999999999999999999999 + 1 | 10000000000000000000000000000000000",
        "2 ** 10 | 1024",
        "2 ** -1 | 0.5",
        "-5 ** 2 | 25",
        "2 ** 3 ** 2 | 64",
        "1 + 2 * 3 | 7",
        "(1 + 2) * 3 | 9",
        "10 - 4 - 3 | 3",
        "sqrt(2) | 1.414213562373095048801688724209698",
        "round half up(2.5, 0) | 3",
        "round half up(-2.5, 0) | -3",
        "decimal(2.5, 0) | 2",
        "floor(-1.5) | -2",
        "ceiling(-1.5) | -1",
        "max(1, 3, 2) - min(1, 3, 2) | 2",
        "abs(-7) | 7",
        "if size > 1 then size else 0 | 2",
        "1 / 0 | nothing",
        "1 / (size - 2) | nothing",
        "0 ** 0 | 1",
        "0 ** -1 | nothing",
        "sqrt(-1) | nothing",
        "size + null | nothing",
        "max(size, null) | nothing",
        "2 ** 1000 | nothing"
      })
  void decimalArithmetic(String formula, String result) throws ExpressionException {
    assertThat(plain(formula)).isEqualTo(result);
  }

  @Test
  @DisplayName("0.1 + 0.2 meets a threshold of 0.3")
  void threshold() throws ExpressionException {
    PossibleValues sum = evaluate("0.1 + 0.2", PossibleValues.of(Value.of(0)));
    CellTest atMost = SampleNames.kind().test("<= 0.3", SampleNames.SIZE);
    CellTest above = SampleNames.kind().test("> 0.3", SampleNames.SIZE);
    assertThat(atMost.outcome(sum, SampleNames.constants()).matches()).isEqualTo(Truth.TRUE);
    assertThat(above.outcome(sum, SampleNames.constants()).matches()).isEqualTo(Truth.FALSE);
  }

  @Test
  @DisplayName("Ranges are exact where the result rises or falls throughout")
  void ranges() throws ExpressionException {
    assertThat(evaluate("size + 1", range(2, 5)).plain()).isEqualTo("[3..6]");
    assertThat(evaluate("10 - size", range(2, 5)).plain()).isEqualTo("[5..8]");
    assertThat(evaluate("size * -2", range(2, 5)).plain()).isEqualTo("[-10..-4]");
    assertThat(evaluate("abs(size)", range(-5, 2)).plain()).isEqualTo("[0..5]");
    assertThat(evaluate("size ** 2", range(2, 5)).plain()).isEqualTo("[4..25]");
    assertThat(evaluate("max(size, 3)", range(2, 5)).plain()).isEqualTo("[3..5]");
    assertThat(evaluate("20 / size", range(2, 5)).plain()).isEqualTo("[4..10]");
  }

  @Test
  @DisplayName("A divisor that may be 0 may give nothing")
  void openDivisor() throws ExpressionException {
    PossibleValues result = evaluate("20 / size", range(-2, 5));
    assertThat(result.orNothing()).isTrue();
    assertThat(result.values().contains(Value.of(-10))).isTrue();
  }

  @Test
  @DisplayName("A power too large to work out is nothing over a range as well")
  void hugePowerOfRange() throws ExpressionException {
    assertThat(evaluate("size ** 1000", range(0, 2)).orNothing()).isTrue();
  }

  @Test
  @DisplayName("Rounding to an open number of places holds every result")
  void openPlaces() throws ExpressionException {
    PossibleValues places =
        PossibleValues.of(
            ValueSet.of(ValueType.NUMBER, List.of(Value.of(-2), Value.of(-1), Value.of(0))));
    assertThat(evaluate("round half up(15, size)", places).values().contains(Value.of(20)))
        .isTrue();
  }

  @Test
  @DisplayName("A null in one branch has the type of the other, so that both can be open")
  void nullBranch() throws ExpressionException {
    PossibleValues result = evaluate("if size > 3 then null else \"a\"", range(2, 5));
    assertThat(result.type()).isEqualTo(ValueType.TEXT);
    assertThat(result.plain()).isEqualTo("a or nothing");
    assertThat(evaluate("if size > 3 then \"a\" else null", range(4, 5)).plain()).isEqualTo("a");
  }

  @ParameterizedTest(name = "{0}")
  @DisplayName(
      "Numbers beyond all measure are worked out or give nothing, at once and without fail")
  @Timeout(5)
  @ValueSource(
      strings = {
        "10 ** 999 ** 999 ** 999 ** 999",
        "0.1 ** 999 ** 999 ** 999 ** 999",
        "10 ** 999 ** 999 ** 900 * 10 ** 999 ** 999 ** 900 * 10 ** 999 ** 999 ** 900",
        "floor(10 ** 999 ** 999 ** 900)",
        "round half up(10 ** 999 ** 999 ** 900, 2)",
        "10 ** 999 ** 999 ** 900 + 1",
        "10 ** 999 ** 999 ** 900 + size",
        "max(10 ** 999 ** 999 ** 900, 0.1 ** 999 ** 999 ** 900)",
        "sqrt(10 ** 999 ** 999 ** 900)"
      })
  void hugeNumbers(String formula) throws ExpressionException {
    PossibleValues open = range(2, 5);
    PossibleValues result = evaluate(formula, open);
    assertThat(result.plain()).isNotEmpty();
    assertThat(result.hashCode()).isEqualTo(evaluate(formula, open).hashCode());
  }

  @Test
  @DisplayName("A function over many open numbers answers at once")
  void manyOpenArguments() throws ExpressionException {
    String formula = "max(" + "size, ".repeat(60) + "size)";
    Assertions.assertThat(SampleNames.kind().formula(formula))
        .satisfies(
            parsed ->
                org.junit.jupiter.api.Assertions.assertTimeoutPreemptively(
                    Duration.ofSeconds(5),
                    () ->
                        assertThat(
                                parsed
                                    .evaluate(SampleNames.only(SampleNames.SIZE, range(2, 5)))
                                    .values()
                                    .contains(Value.of(new BigDecimal("2.5"))))
                            .isTrue()));
  }

  @Test
  @DisplayName("Brackets that nest inside tests are read at once, also when they are faulty")
  @Timeout(5)
  void nestedTests() {
    for (String end : List.of("", ")".repeat(40))) {
      Assertions.assertThatCode(
              () -> SampleNames.kind().formula("size in ((".repeat(20) + "1" + end))
          .satisfiesAnyOf(
              thrown -> assertThat(thrown).isNull(),
              thrown -> assertThat(thrown).isInstanceOf(ExpressionException.class));
    }
  }
}
