package org.cotyla.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.Value.NumberValue;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Geometry over measurements that are not yet known")
class RangeTest {

  @Test
  @DisplayName("An unknown anteversion round 0 is judged at 0 too, where the function turns")
  void turningPoint() {
    PossibleValues result =
        over("anatomic inclination from radiographic", span(40, 40), span(-10, 10));
    assertThat(result.values().contains(Value.of(40))).isTrue();
    assertThat(result.values().contains(number(39.99))).isFalse();
    double atTheEnds = Geometry.call("anatomic inclination from radiographic", 40, 10);
    assertThat(result.values().contains(number(atTheEnds))).isTrue();
    assertThat(result.orNothing()).isFalse();
  }

  @Test
  @DisplayName("A range of cup positions gives a useful range of jump distances")
  void jumpDistanceRange() {
    PossibleValues result =
        over("jump distance", span(32, 36), span(40, 50), span(15, 15), span(0, 1));
    Interval hull = result.values().hull();
    assertThat(asDouble(hull.low())).isBetween(10.2, 10.3);
    assertThat(asDouble(hull.high())).isBetween(15.4, 15.5);
    assertThat(result.orNothing()).isFalse();
  }

  @Test
  @DisplayName("With a sunk centre a middle head may jump soonest, and the range says so")
  void sunkCentre() {
    PossibleValues result =
        over("jump distance from radiographic", span(22, 60), span(80, 80), span(-10.5, -10.5));
    double small = Geometry.call("jump distance from radiographic", 22, 80, -10.5);
    double middle = Geometry.call("jump distance from radiographic", 35, 80, -10.5);
    double large = Geometry.call("jump distance from radiographic", 60, 80, -10.5);
    assertThat(middle).isLessThan(small).isLessThan(large);
    assertThat(result.values().contains(number(middle))).isTrue();
  }

  @Test
  @DisplayName("Sizes to choose from give one result each")
  void sizesToChooseFrom() {
    ValueSet heads =
        ValueSet.of(ValueType.NUMBER, List.of(Value.of(28), Value.of(32), Value.of(36)));
    PossibleValues result =
        Geometry.function("oscillation angle")
            .apply(List.of(PossibleValues.of(heads), span(12, 12), span(0, 0)));
    assertThat(result.values().isFinite()).isTrue();
    assertThat(result.values().values()).hasSize(3);
  }

  @Test
  @DisplayName("A range that leaves what can be is held as far as it can be, or nothing")
  void partlyOutOfRange() {
    PossibleValues result = over("cap share", span(60, 120));
    assertThat(result.orNothing()).isTrue();
    assertThat(result.values().contains(Value.of(100))).isTrue();
    assertThat(result.values().contains(Value.of(49))).isFalse();
  }

  @Test
  @DisplayName("Motion over a stretch is anything up to half a turn, since nothing more is proven")
  void motionOverAStretch() {
    PossibleValues result =
        over(
            "flexion to impingement",
            span(40, 45),
            span(15, 15),
            span(15, 15),
            span(135, 135),
            span(36, 36),
            span(12, 12));
    assertThat(result.plain()).isEqualTo("[0..180]");
  }

  private static PossibleValues over(String name, PossibleValues... arguments) {
    FormulaFunction function = Geometry.function(name);
    return function.apply(List.of(arguments));
  }

  private static PossibleValues span(double low, double high) {
    return PossibleValues.of(
        ValueSet.between(ValueType.NUMBER, number(low), true, number(high), true));
  }

  private static Value number(double number) {
    return Value.of(BigDecimal.valueOf(number).setScale(9, RoundingMode.HALF_EVEN));
  }

  private static double asDouble(Value value) {
    return ((NumberValue) value).number().doubleValue();
  }
}
