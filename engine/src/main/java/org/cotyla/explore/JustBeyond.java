package org.cotyla.explore;

import java.math.BigDecimal;
import java.util.Optional;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;

/** Values just beyond a line, with no more decimals than will do. */
final class JustBeyond {

  private static final int FINER_AT_MOST = 6;

  private JustBeyond() {}

  /**
   * The value one step beyond the line, in steps as fine as it takes to stay among the values.
   *
   * @param decimals the decimals of the first step that is tried
   */
  static Optional<Value> line(BigDecimal line, ValueSet values, boolean above, int decimals) {
    for (int finer = 0; finer <= FINER_AT_MOST; finer++) {
      BigDecimal step = BigDecimal.ONE.movePointLeft(decimals + finer);
      Value value = Value.of(above ? line.add(step) : line.subtract(step));
      if (values.contains(value)) {
        return Optional.of(value);
      }
    }
    return Optional.empty();
  }
}
