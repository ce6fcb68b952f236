package org.cotyla.expression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.cotyla.expression.RangedFunction.Formula;
import org.cotyla.expression.RangedFunction.Shape;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A function of measurements with ranges of sense")
class RangedFunctionTest {

  private static final RangedFunction SQUARE =
      function(Shape.MONOTONE, n -> some(n[0] * n[0]), RangedArgument.from(-10, 10).turningAt(0));

  @Test
  @DisplayName("gives one result for one number, rounded to 9 decimals")
  void single() {
    assertThat(SQUARE.apply(List.of(number("1.5"))).plain()).isEqualTo("2.25");
    RangedFunction third = function(Shape.ANY, n -> some(n[0] / 3), RangedArgument.from(0, 10));
    assertThat(third.apply(List.of(number("1"))).plain()).isEqualTo("0.333333333");
  }

  @Test
  @DisplayName("gives nothing for a number that makes no sense, or for nothing")
  void nothing() {
    assertThat(SQUARE.apply(List.of(number("11"))).isNothing()).isTrue();
    assertThat(SQUARE.apply(List.of(number("-10.001"))).isNothing()).isTrue();
    assertThat(SQUARE.apply(List.of(PossibleValues.nothing(ValueType.NUMBER))).isNothing())
        .isTrue();
    assertThat(SQUARE.apply(List.of(PossibleValues.nothing(ValueType.TEXT))).isNothing()).isTrue();
  }

  @Test
  @DisplayName("leaves out the ends that an argument leaves out")
  void openEnds() {
    RangedFunction open = function(Shape.MONOTONE, n -> some(n[0]), RangedArgument.between(0, 5));
    assertThat(open.apply(List.of(number("0"))).isNothing()).isTrue();
    assertThat(open.apply(List.of(number("5.0"))).isNothing()).isTrue();
    assertThat(open.apply(List.of(number("0.1"))).plain()).isEqualTo("0.1");
    RangedFunction above = function(Shape.MONOTONE, n -> some(n[0]), RangedArgument.above(0, 5));
    assertThat(above.apply(List.of(number("0"))).isNothing()).isTrue();
    assertThat(above.apply(List.of(number("5"))).plain()).isEqualTo("5");
  }

  @Test
  @DisplayName("looks at a turning point inside a stretch, and not outside it")
  void turningPoints() {
    assertThat(SQUARE.apply(List.of(span(-2, 3))).plain()).isEqualTo("[0..9.000000001]");
    assertThat(SQUARE.apply(List.of(span(1, 3))).plain()).isEqualTo("[0.999999999..9.000000001]");
  }

  @Test
  @DisplayName("takes a stretch as far as it makes sense, or nothing")
  void cutStretch() {
    PossibleValues result = SQUARE.apply(List.of(span(8, 20)));
    assertThat(result.plain()).isEqualTo("[63.999999999..100] or nothing");
    PossibleValues all = SQUARE.apply(List.of(PossibleValues.of(ValueSet.all(ValueType.NUMBER))));
    assertThat(all.plain()).isEqualTo("[0..100] or nothing");
  }

  @Test
  @DisplayName("works out a finite set one by one, and stretches apart")
  void severalParts() {
    ValueSet points = ValueSet.of(ValueType.NUMBER, List.of(Value.of(-2), Value.of(1)));
    assertThat(SQUARE.apply(List.of(PossibleValues.of(points))).plain()).isEqualTo("1, 4");
    PossibleValues parts = PossibleValues.of(points.union(span(5, 6).values()));
    assertThat(SQUARE.apply(List.of(parts)).plain())
        .isEqualTo("1, 4, [24.999999999..36.000000001]");
  }

  @Test
  @DisplayName("joins a set that is too long before it looks")
  void manyParts() {
    List<Value> many =
        IntStream.range(0, 300)
            .mapToObj(i -> Value.of(BigDecimal.valueOf(i).movePointLeft(2)))
            .toList();
    PossibleValues result =
        SQUARE.apply(List.of(PossibleValues.of(ValueSet.of(ValueType.NUMBER, many))));
    assertThat(result.plain()).isEqualTo("[0..8.940100001]");
  }

  @Test
  @DisplayName("is any of its results over a stretch when its shape is not proven")
  void unproven() {
    RangedFunction any = function(Shape.ANY, n -> some(n[0] * n[0]), RangedArgument.from(-10, 10));
    assertThat(any.apply(List.of(span(2, 3))).plain()).isEqualTo("[0..100]");
    assertThat(any.apply(List.of(number("2"))).plain()).isEqualTo("4");
  }

  @Test
  @DisplayName("is any of its results, or nothing, where the numbers may not go together")
  void jointRange() {
    RangedFunction gap =
        function(
            Shape.MONOTONE,
            n -> n[1] > n[0] ? OptionalDouble.empty() : some(n[0] - n[1]),
            RangedArgument.from(0, 10),
            RangedArgument.from(0, 10));
    assertThat(gap.apply(List.of(number("3"), number("4"))).isNothing()).isTrue();
    assertThat(gap.apply(List.of(span(3, 5), span(1, 2))).plain())
        .isEqualTo("[0.999999999..4.000000001]");
    assertThat(gap.apply(List.of(span(3, 5), span(1, 4))).plain()).isEqualTo("[0..100] or nothing");
  }

  @Test
  @DisplayName("bounds an argument that pulls both ways as if it were two")
  void takenTwice() {
    // x - x * x turns at 0.5, but rises in the first x and falls in the second one.
    RangedFunction both =
        function(
            Shape.MONOTONE, n -> some(50 + n[0] - n[1] * n[1]), RangedArgument.from(0, 2).taken(2));
    assertThat(both.parameters()).hasSize(1);
    assertThat(both.apply(List.of(number("0.5"))).plain()).isEqualTo("50.25");
    assertThat(both.apply(List.of(span(0, 1))).plain()).isEqualTo("[48.999999999..51.000000001]");
  }

  @Test
  @DisplayName("gives nothing where the formula gives no finite number")
  void notFinite() {
    RangedFunction root = function(Shape.ANY, n -> some(1 / n[0]), RangedArgument.from(0, 5));
    assertThat(root.apply(List.of(number("0"))).isNothing()).isTrue();
  }

  @Test
  @DisplayName("refuses an argument without ends")
  void endless() {
    assertThatThrownBy(() -> new RangedArgument(Interval.everything(), List.of(), 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("both ends");
  }

  private static RangedFunction function(
      Shape shape, Formula formula, RangedArgument... arguments) {
    Interval results = new Interval(Value.of(0), true, Value.of(100), true);
    return new RangedFunction("f", List.of(arguments), results, shape, formula);
  }

  private static OptionalDouble some(double number) {
    return OptionalDouble.of(number);
  }

  private static PossibleValues number(String number) {
    return PossibleValues.of(Value.of(new BigDecimal(number)));
  }

  private static PossibleValues span(long low, long high) {
    return PossibleValues.of(
        ValueSet.between(ValueType.NUMBER, Value.of(low), true, Value.of(high), true));
  }
}
