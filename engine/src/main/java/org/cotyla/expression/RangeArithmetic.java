package org.cotyla.expression;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.Value.NumberValue;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;
import org.jspecify.annotations.Nullable;

/**
 * Decimal arithmetic over ranges. The result holds every value that single operands could give;
 * ends are included even where an operand's end was open, since rounding to 34 digits can reach
 * them.
 */
final class RangeArithmetic {

  /**
   * How many pairs of intervals are worked out one by one; beyond it the ranges are joined first.
   */
  private static final int PAIRS_AT_MOST = 64;

  private RangeArithmetic() {}

  static PossibleValues combine(ArithmeticSign sign, PossibleValues left, PossibleValues right) {
    boolean orNothing = left.orNothing() || right.orNothing();
    if (left.type() == ValueType.TEXT
        && right.type() == ValueType.TEXT
        && sign == ArithmeticSign.ADD) {
      return new PossibleValues(join(left.values(), right.values()), orNothing);
    }
    if (left.type() != ValueType.NUMBER || right.type() != ValueType.NUMBER) {
      return PossibleValues.nothing(ValueType.NUMBER);
    }
    List<Interval> results = new ArrayList<>();
    List<Interval> lefts = parts(left.values(), right.values());
    List<Interval> rights = parts(right.values(), left.values());
    for (Interval a : lefts) {
      for (Interval b : rights) {
        Optional<Interval> result =
            a.isPoint() && b.isPoint() ? point(sign, a, b) : range(sign, a, b);
        result.ifPresent(results::add);
        orNothing |= sign.canFail(a, b);
      }
    }
    return new PossibleValues(ValueSet.ofIntervals(ValueType.NUMBER, results), orNothing);
  }

  private static List<Interval> parts(ValueSet set, ValueSet other) {
    boolean many = (long) set.parts().size() * other.parts().size() > PAIRS_AT_MOST;
    return many && !set.isEmpty() ? List.of(set.hull()) : set.parts();
  }

  private static Optional<Interval> point(ArithmeticSign sign, Interval a, Interval b) {
    return sign.apply(number(a.low()), number(b.low())).map(Value::of).map(Interval::point);
  }

  private static Optional<Interval> range(ArithmeticSign sign, Interval a, Interval b) {
    return switch (sign) {
      case ADD ->
          closed(
              both(a.low(), b.low(), RangeArithmetic::plus),
              both(a.high(), b.high(), RangeArithmetic::plus));
      case SUBTRACT ->
          closed(
              both(a.low(), b.high(), RangeArithmetic::minus),
              both(a.high(), b.low(), RangeArithmetic::minus));
      case MULTIPLY, DIVIDE, POWER -> sign.isMonotone(a, b) ? corners(sign, a, b) : everything();
    };
  }

  private static @Nullable BigDecimal both(
      @Nullable Value a, @Nullable Value b, BinaryOperator<BigDecimal> operation) {
    return a == null || b == null ? null : operation.apply(number(a), number(b));
  }

  private static BigDecimal plus(BigDecimal a, BigDecimal b) {
    return a.add(b, Value.ARITHMETIC);
  }

  private static BigDecimal minus(BigDecimal a, BigDecimal b) {
    return a.subtract(b, Value.ARITHMETIC);
  }

  /** The extremes of an operation that is monotone in each operand lie at the operands' ends. */
  private static Optional<Interval> corners(ArithmeticSign sign, Interval a, Interval b) {
    BigDecimal low = null;
    BigDecimal high = null;
    for (Value x : ends(a)) {
      for (Value y : ends(b)) {
        Optional<BigDecimal> corner = sign.apply(number(x), number(y));
        if (corner.isEmpty()) {
          return everything();
        }
        low = low == null ? corner.get() : low.min(corner.get());
        high = high == null ? corner.get() : high.max(corner.get());
      }
    }
    return closed(low, high);
  }

  static List<Value> ends(Interval interval) {
    Value low = interval.low();
    Value high = interval.high();
    return low == null || high == null ? List.of() : List.of(low, high);
  }

  private static Optional<Interval> closed(@Nullable BigDecimal low, @Nullable BigDecimal high) {
    return Optional.of(
        new Interval(
            low == null ? null : Value.of(low), true, high == null ? null : Value.of(high), true));
  }

  private static Optional<Interval> everything() {
    return Optional.of(Interval.everything());
  }

  static BigDecimal number(@Nullable Value value) {
    if (value instanceof NumberValue known) {
      return known.number();
    }
    throw new IllegalArgumentException("not a number: " + value);
  }

  private static ValueSet join(ValueSet left, ValueSet right) {
    boolean many = (long) left.parts().size() * right.parts().size() > PAIRS_AT_MOST;
    if (many || !left.isFinite() || !right.isFinite()) {
      return ValueSet.all(ValueType.TEXT);
    }
    List<Value> joined = new ArrayList<>();
    for (Value a : left.values()) {
      for (Value b : right.values()) {
        joined.add(Value.of(a.plain() + b.plain()));
      }
    }
    return ValueSet.of(ValueType.TEXT, joined);
  }
}
