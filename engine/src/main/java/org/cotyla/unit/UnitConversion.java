package org.cotyla.unit;

import java.math.BigDecimal;
import org.cotyla.value.Value;

/**
 * From one unit to another by a factor.
 *
 * @param factor what a quantity is multiplied or divided by
 * @param divides whether it is divided: 18 months are 18 / 12 years, and 1 / 12 has no end
 */
record UnitConversion(BigDecimal factor, boolean divides) {

  BigDecimal apply(BigDecimal quantity) {
    return divides
        ? quantity.divide(factor, Value.ARITHMETIC)
        : quantity.multiply(factor, Value.ARITHMETIC);
  }

  /** Of the factor there and the factor back, the one with fewer digits is the exact one. */
  static UnitConversion shorter(BigDecimal there, BigDecimal back) {
    BigDecimal times = there.stripTrailingZeros();
    BigDecimal per = back.stripTrailingZeros();
    return per.signum() != 0 && per.precision() < times.precision()
        ? new UnitConversion(per, true)
        : new UnitConversion(times, false);
  }
}
