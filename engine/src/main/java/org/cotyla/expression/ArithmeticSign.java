package org.cotyla.expression;

import java.math.BigDecimal;
import java.util.Optional;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;
import org.jspecify.annotations.Nullable;

/** The arithmetic signs of S-FEEL. */
public enum ArithmeticSign {
  ADD("+", 4),
  SUBTRACT("-", 4),
  MULTIPLY("*", 5),
  DIVIDE("/", 5),
  POWER("**", 6);

  /** Above this exponent a power is refused as nothing rather than worked out digit by digit. */
  private static final int EXPONENT_AT_MOST = 999;

  private final String sign;
  private final int strength;

  ArithmeticSign(String sign, int strength) {
    this.sign = sign;
    this.strength = strength;
  }

  public String sign() {
    return sign;
  }

  /** How tightly it binds; larger binds tighter. */
  int strength() {
    return strength;
  }

  /** The result, or nothing where the standard says null: division by zero, an undefined power. */
  Optional<BigDecimal> apply(BigDecimal a, BigDecimal b) {
    try {
      return result(a, b);
    } catch (ArithmeticException beyondMeasure) {
      return Optional.empty();
    }
  }

  private Optional<BigDecimal> result(BigDecimal a, BigDecimal b) {
    return switch (this) {
      case ADD -> Optional.of(a.add(b, Value.ARITHMETIC));
      case SUBTRACT -> Optional.of(a.subtract(b, Value.ARITHMETIC));
      case MULTIPLY -> Optional.of(a.multiply(b, Value.ARITHMETIC));
      case DIVIDE ->
          b.signum() == 0 ? Optional.empty() : Optional.of(a.divide(b, Value.ARITHMETIC));
      case POWER -> power(a, b);
    };
  }

  private static Optional<BigDecimal> power(BigDecimal base, BigDecimal exponent) {
    if (exponent.abs().compareTo(BigDecimal.valueOf(EXPONENT_AT_MOST)) > 0) {
      return Optional.empty();
    }
    boolean whole = exponent.stripTrailingZeros().scale() <= 0;
    if (whole && (base.signum() != 0 || exponent.signum() > 0)) {
      return Optional.of(base.pow(exponent.intValueExact(), Value.ARITHMETIC));
    }
    if (whole || base.signum() < 0 || (base.signum() == 0 && exponent.signum() <= 0)) {
      return whole && exponent.signum() == 0 ? Optional.of(BigDecimal.ONE) : Optional.empty();
    }
    // StrictMath gives the same digits on every machine, which Math need not.
    double result = StrictMath.pow(base.doubleValue(), exponent.doubleValue());
    return Double.isFinite(result) ? Optional.of(BigDecimal.valueOf(result)) : Optional.empty();
  }

  /** Whether some values of the two ranges have no result. */
  boolean canFail(Interval a, Interval b) {
    if (this == ADD || this == SUBTRACT) {
      return false;
    }
    if ((a.isPoint() && b.isPoint()) || isMonotone(a, b)) {
      return RangeArithmetic.ends(a).stream()
          .anyMatch(x -> RangeArithmetic.ends(b).stream().anyMatch(y -> failsAt(x, y)));
    }
    return this == POWER || (this == DIVIDE && b.contains(Value.of(0)));
  }

  private boolean failsAt(Value a, Value b) {
    return apply(RangeArithmetic.number(a), RangeArithmetic.number(b)).isEmpty();
  }

  /** Whether over these ranges the result is monotone in each operand, so that its ends suffice. */
  boolean isMonotone(Interval a, Interval b) {
    return switch (this) {
      case ADD, SUBTRACT -> true;
      case MULTIPLY -> bounded(a) && bounded(b);
      case DIVIDE -> bounded(a) && bounded(b) && !b.contains(Value.of(0)) && !touchesZero(b);
      case POWER -> bounded(a) && b.isPoint() && wholePositive(b.low()) && atLeastZero(a.low());
    };
  }

  private static boolean bounded(Interval interval) {
    return interval.low() != null && interval.high() != null;
  }

  private static boolean touchesZero(Interval interval) {
    Value zero = Value.of(0);
    return zero.equals(interval.low()) || zero.equals(interval.high());
  }

  private static boolean wholePositive(@Nullable Value value) {
    BigDecimal number = RangeArithmetic.number(value);
    return number.signum() > 0 && number.stripTrailingZeros().scale() <= 0;
  }

  private static boolean atLeastZero(@Nullable Value value) {
    return RangeArithmetic.number(value).signum() >= 0;
  }
}
