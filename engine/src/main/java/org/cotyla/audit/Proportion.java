package org.cotyla.audit;

import java.util.OptionalDouble;
import org.apache.commons.statistics.interval.BinomialConfidenceInterval;
import org.apache.commons.statistics.interval.Interval;

/**
 * A share of a whole with its 95 % interval, by Wilson's score.
 *
 * @param count how many
 * @param of of how many
 * @param lower the lower end of the interval, 0 when there is nothing to count
 * @param upper the upper end of the interval, 1 when there is nothing to count
 */
public record Proportion(long count, long of, double lower, double upper) {

  /** How often an interval made in this way misses what it looks for. */
  static final double MISSES = 0.05;

  /**
   * The share.
   *
   * @throws ArithmeticException above two thousand million
   */
  public static Proportion of(long count, long of) {
    if (of == 0) {
      return new Proportion(0, 0, 0, 1);
    }
    Interval interval =
        BinomialConfidenceInterval.WILSON_SCORE.fromErrorRate(
            Math.toIntExact(of), Math.toIntExact(count), MISSES);
    return new Proportion(
        count, of, Math.max(0, interval.getLowerBound()), Math.min(1, interval.getUpperBound()));
  }

  /** The share itself; nothing when there is nothing to count. */
  public OptionalDouble share() {
    return of == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) count / of);
  }
}
