package org.cotyla.cli.report;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;

/**
 * The least and the greatest that a number can be, for drawing.
 *
 * @param low the least
 * @param high the greatest; the same when the number is certain
 */
record NumberRange(double low, double high) {

  /** Nothing when it is no number, may be nothing, or has no end on some side. */
  static Optional<NumberRange> of(PossibleValues possible) {
    if (possible.type() != ValueType.NUMBER || possible.orNothing()) {
      return Optional.empty();
    }
    List<Interval> parts = possible.values().parts();
    if (parts.isEmpty()) {
      return Optional.empty();
    }
    Value low = parts.get(0).low();
    Value high = parts.get(parts.size() - 1).high();
    return low == null || high == null
        ? Optional.empty()
        : Optional.of(new NumberRange(number(low), number(high)));
  }

  private static double number(Value value) {
    BigDecimal number = ((Value.NumberValue) value).number();
    return number.doubleValue();
  }

  boolean isCertain() {
    return low == high;
  }

  /** As it stands beside a drawing, to one decimal. */
  String plain() {
    String least = Drawing.number(Math.round(low * 10) / 10.0);
    return isCertain() ? least : least + " to " + Drawing.number(Math.round(high * 10) / 10.0);
  }
}
