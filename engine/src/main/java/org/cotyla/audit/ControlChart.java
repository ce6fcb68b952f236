package org.cotyla.audit;

import java.util.ArrayList;
import java.util.List;

/**
 * A control chart of a proportion, by Shewhart: for each sample limits three standard deviations
 * from the common proportion, which widen as the sample gets smaller.
 *
 * <p>With the common proportion p over all samples and n in one of them, the limits are p ± 3 √(p(1
 * − p)/n), cut off at 0 and 1.
 *
 * @param centre the common proportion
 * @param points one for each sample, in their order
 */
public record ControlChart(double centre, List<Point> points) {

  private static final double DEVIATIONS = 3;

  /** Below this many expected either way the limits are rough (common practice). */
  private static final double FEW = 5;

  public ControlChart {
    points = List.copyOf(points);
  }

  /** What was counted in one sample; none when nothing was. */
  public record Sample(String name, long count, long of) {}

  /**
   * A sample with its limits.
   *
   * @param share the proportion in it
   * @param rough whether so few were expected that the limits say little
   */
  public record Point(
      String name, long count, long of, double share, double lower, double upper, boolean rough) {

    /** Whether it lies outside of its limits. */
    public boolean isBeyond() {
      return share < lower || share > upper;
    }
  }

  /** The chart of samples; those in which nothing was counted have no point. */
  public static ControlChart of(List<Sample> samples) {
    long count = samples.stream().mapToLong(Sample::count).sum();
    long all = samples.stream().mapToLong(Sample::of).sum();
    double centre = all == 0 ? 0 : (double) count / all;
    List<Point> points = new ArrayList<>();
    for (Sample sample : samples) {
      if (sample.of() > 0) {
        points.add(point(sample, centre));
      }
    }
    return new ControlChart(centre, points);
  }

  private static Point point(Sample sample, double centre) {
    double reach = DEVIATIONS * Math.sqrt(centre * (1 - centre) / sample.of());
    return new Point(
        sample.name(),
        sample.count(),
        sample.of(),
        (double) sample.count() / sample.of(),
        Math.max(0, centre - reach),
        Math.min(1, centre + reach),
        sample.of() * Math.min(centre, 1 - centre) < FEW);
  }
}
