package org.cotyla.value;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ValueTest {

  private static Value number(String digits) {
    return Value.of(new BigDecimal(digits));
  }

  @Test
  @DisplayName("Numbers are equal by quantity, whatever zeros follow")
  void numbersEqualByQuantity() {
    assertThat(number("1.00")).isEqualTo(number("1")).hasSameHashCodeAs(number("1"));
    assertThat(number("0.00")).isEqualTo(number("-0")).hasSameHashCodeAs(number("0"));
    assertThat(number("1E+2")).isEqualTo(number("100")).hasSameHashCodeAs(number("100"));
    assertThat(number("1.01")).isNotEqualTo(number("1"));
  }

  @Test
  @DisplayName("People read numbers without exponents and superfluous zeros, unless they are huge")
  void plainNumbers() {
    assertThat(number("30.50").plain()).isEqualTo("30.5");
    assertThat(number("1E+3").plain()).isEqualTo("1000");
    assertThat(number("0.000").plain()).isEqualTo("0");
    assertThat(number("1E+3000").plain()).isEqualTo("1E+3000");
  }

  @Test
  @DisplayName("People read yes and no, texts bare and dates as year-month-day")
  void plainOthers() {
    assertThat(Value.of(true).plain()).isEqualTo("yes");
    assertThat(Value.of("as it is").plain()).isEqualTo("as it is");
    assertThat(Value.of(LocalDate.of(2026, 1, 31)).plain()).isEqualTo("2026-01-31");
  }

  @Test
  @DisplayName("Literals are those of S-FEEL, with quotes, backslashes and new lines escaped")
  void literals() {
    assertThat(Value.of(true).literal()).isEqualTo("true");
    assertThat(Value.of("a \"b\" \\ c\nd").literal()).isEqualTo("\"a \\\"b\\\" \\\\ c\\nd\"");
    assertThat(Value.of(LocalDate.of(2026, 1, 31)).literal()).isEqualTo("date(\"2026-01-31\")");
  }

  @Test
  @DisplayName("Sets read as people write them")
  void plainSets() {
    Value low = Value.of(15);
    Value high = Value.of(30);
    assertThat(ValueSet.between(ValueType.NUMBER, low, true, high, false).plain())
        .isEqualTo("[15..30)");
    assertThat(ValueSet.between(ValueType.NUMBER, low, false, null, false).plain())
        .isEqualTo("> 15");
    assertThat(ValueSet.between(ValueType.NUMBER, null, false, high, true).plain())
        .isEqualTo("<= 30");
    assertThat(ValueSet.all(ValueType.NUMBER).plain()).isEqualTo("-");
    assertThat(ValueSet.of(ValueType.NUMBER, List.of(high, low)).plain()).isEqualTo("15, 30");
    assertThat(ValueSet.all(ValueType.YES_NO).plain()).isEqualTo("no, yes");
  }

  @Test
  @DisplayName("Possible values read as a set, as nothing, or as either")
  void plainPossibleValues() {
    PossibleValues five = PossibleValues.of(Value.of(5));
    PossibleValues nothing = PossibleValues.nothing(ValueType.NUMBER);
    assertThat(five.plain()).isEqualTo("5");
    assertThat(nothing.plain()).isEqualTo("nothing");
    assertThat(five.union(nothing).plain()).isEqualTo("5 or nothing");
    assertThat(five.isCertain()).isTrue();
    assertThat(nothing.isCertain()).isTrue();
    assertThat(five.union(nothing).isCertain()).isFalse();
    assertThat(five.union(nothing).single()).isEmpty();
  }

  @Test
  @DisplayName("A union with values of one type and no values of another is of the former's type")
  void unionOfEmptyIsOther() {
    ValueSet noNumbers = ValueSet.none(ValueType.NUMBER);
    ValueSet word = ValueSet.of(Value.of("a"));
    assertThat(noNumbers.union(word)).isEqualTo(word);
    assertThat(word.union(noNumbers)).isEqualTo(word);
  }

  @Test
  @DisplayName("An interval never holds an impossible pair of ends")
  void impossibleIntervals() {
    Value one = Value.of(1);
    assertThat(Interval.between(Value.of(2), true, one, true)).isEmpty();
    assertThat(Interval.between(one, true, one, false)).isEmpty();
    assertThat(Interval.between(one, true, one, true)).contains(Interval.point(one));
  }

  @Test
  @DisplayName("Truth follows three-valued logic")
  void truth() {
    assertThat(Truth.TRUE.and(Truth.OPEN)).isEqualTo(Truth.OPEN);
    assertThat(Truth.FALSE.and(Truth.OPEN)).isEqualTo(Truth.FALSE);
    assertThat(Truth.TRUE.or(Truth.OPEN)).isEqualTo(Truth.TRUE);
    assertThat(Truth.FALSE.or(Truth.OPEN)).isEqualTo(Truth.OPEN);
    assertThat(Truth.OPEN.not()).isEqualTo(Truth.OPEN);
    assertThat(Truth.TRUE.either(Truth.FALSE)).isEqualTo(Truth.OPEN);
    assertThat(Truth.TRUE.either(Truth.TRUE)).isEqualTo(Truth.TRUE);
  }
}
