package org.cotyla.rules.geometry;

import java.util.List;
import java.util.OptionalDouble;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.expression.RangedArgument;
import org.cotyla.expression.RangedFunction;
import org.cotyla.expression.RangedFunction.Shape;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;

/** Stretches of the clock face and areas on the hemisphere; plain geometry of the sphere. */
final class SurfaceFunctions {

  private static final RangedArgument CLOCK = RangedArgument.from(0, 12);
  private static final RangedArgument POLAR_ANGLE = RangedArgument.from(0, 90);
  private static final Interval SHARE = range(100);

  private SurfaceFunctions() {}

  static List<FormulaFunction> all() {
    return List.of(
        new RangedFunction(
            "clock hours",
            List.of(CLOCK, CLOCK),
            range(12),
            Shape.ANY,
            n -> OptionalDouble.of(clockwise(n[0], n[1]))),
        new RangedFunction(
            "clock hours anticlockwise",
            List.of(CLOCK, CLOCK),
            range(12),
            Shape.ANY,
            n -> OptionalDouble.of(clockwise(n[1], n[0]))),
        new RangedFunction(
            "sector share",
            List.of(CLOCK, POLAR_ANGLE, POLAR_ANGLE),
            SHARE,
            Shape.MONOTONE,
            n -> sectorShare(n[0], n[1], n[2])),
        new RangedFunction(
            "cap share",
            List.of(POLAR_ANGLE),
            SHARE,
            Shape.MONOTONE,
            n -> OptionalDouble.of(capShare(n[0]))),
        new RangedFunction(
            "cup share",
            List.of(RangedArgument.from(0, 180)),
            SHARE,
            Shape.MONOTONE,
            n -> OptionalDouble.of(capShare(n[0] / 2))),
        new RangedFunction(
            "hemisphere area",
            List.of(RangedArgument.above(0, 200)),
            range(629),
            Shape.MONOTONE,
            n -> OptionalDouble.of(StrictMath.PI * n[0] * n[0] / 200)));
  }

  /** A round that ends where it began is a full one. */
  private static double clockwise(double from, double to) {
    double hours = (to - from) % 12;
    return hours > 0 ? hours : hours + 12;
  }

  private static OptionalDouble sectorShare(double hours, double inner, double outer) {
    return inner > outer
        ? OptionalDouble.empty()
        : OptionalDouble.of(hours / 12 * (capShare(outer) - capShare(inner)));
  }

  /** Percent of the hemisphere's area within the angle from its pole. */
  private static double capShare(double halfAngle) {
    return 100 * (1 - Degrees.cos(halfAngle));
  }

  private static Interval range(long high) {
    return new Interval(Value.of(0), true, Value.of(high), true);
  }
}
