package org.cotyla.expression;

import org.cotyla.value.PossibleValues;

/** Sums and differences of ranges, for what is added up outside formulas. */
public final class RangeSum {

  private RangeSum() {}

  public static PossibleValues add(PossibleValues a, PossibleValues b) {
    return RangeArithmetic.combine(ArithmeticSign.ADD, a, b);
  }

  public static PossibleValues subtract(PossibleValues a, PossibleValues b) {
    return RangeArithmetic.combine(ArithmeticSign.SUBTRACT, a, b);
  }
}
