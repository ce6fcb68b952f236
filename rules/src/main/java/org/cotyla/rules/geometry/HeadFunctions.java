package org.cotyla.rules.geometry;

import java.util.List;
import java.util.OptionalDouble;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.expression.RangedArgument;
import org.cotyla.expression.RangedFunction;
import org.cotyla.expression.RangedFunction.Shape;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;

/** How far the head must move to leave the cup, and how far the neck may swing in it. */
final class HeadFunctions {

  private static final RangedArgument INCLINATION = RangedArgument.from(0, 90);
  private static final RangedArgument ANTEVERSION = RangedArgument.from(-90, 90).turningAt(0);
  private static final RangedArgument DEPTH = RangedArgument.from(-100, 100);

  /**
   * The swing of the neck runs one way along the head's diameter D: the slopes of {@code asin(k/D)}
   * for the neck and for twice the inset grow with k, so the larger of the two decides everywhere.
   */
  private static final RangedArgument HEAD = RangedArgument.above(0, 200);

  /**
   * A larger head has a longer way to jump, but with its centre sunk as deep it also lies less deep
   * for its size, and the two pull against each other.
   */
  private static final RangedArgument JUMPING_HEAD = HEAD.taken(2);

  private HeadFunctions() {}

  static List<FormulaFunction> all() {
    return List.of(
        new RangedFunction(
            "jump distance",
            List.of(JUMPING_HEAD, INCLINATION, ANTEVERSION, DEPTH),
            range(200),
            Shape.MONOTONE,
            n -> jumpDistance(n[0], n[1], planarInclination(n[2], n[3]), n[4])),
        new RangedFunction(
            "jump distance from radiographic",
            List.of(JUMPING_HEAD, INCLINATION, DEPTH),
            range(200),
            Shape.MONOTONE,
            n -> jumpDistance(n[0], n[1], n[2], n[3])),
        new RangedFunction(
            "oscillation angle",
            List.of(HEAD, RangedArgument.above(0, 200), DEPTH),
            range(360),
            Shape.MONOTONE,
            n -> oscillationAngle(n[0], n[1], n[2])));
  }

  /** The inclination in the coronal plane, which is the radiographic one. */
  private static double planarInclination(double anatomicInclination, double anatomicAnteversion) {
    return OrientationSystem.RADIOGRAPHIC.inclination(
        OrientationSystem.ANATOMIC.direction(anatomicInclination, anatomicAnteversion));
  }

  /**
   * The lateral way of the head's centre until the head stands on the rim (after SARIALI-2009): the
   * chord, twice the radius times the sine of half the angle that the rim still covers; 0 where it
   * covers none.
   *
   * @param length the head's diameter as a length
   * @param head the head's diameter as it lies in the rim
   */
  private static OptionalDouble jumpDistance(
      double length, double head, double planarInclination, double offset) {
    if (StrictMath.abs(2 * offset) > head) {
      return OptionalDouble.empty();
    }
    double covered = 90 - planarInclination - Degrees.asin(ratio(2 * offset, head));
    return OptionalDouble.of(length * Degrees.sin(StrictMath.max(0, covered) / 2));
  }

  /**
   * The whole swing of the neck from rim to rim (after YOSHIMINE-2002; the expression is derived
   * here): the rim's angle from the cup's axis less the half width of the neck, on both sides.
   */
  static OptionalDouble oscillationAngle(double head, double neck, double inset) {
    if (neck > head || StrictMath.abs(2 * inset) > head) {
      return OptionalDouble.empty();
    }
    double half = 90 - Degrees.asin(ratio(2 * inset, head)) - Degrees.asin(ratio(neck, head));
    return OptionalDouble.of(2 * StrictMath.max(0, half));
  }

  /** At the end that its range leaves out the head is a point, in which nothing lies off-centre. */
  private static double ratio(double part, double whole) {
    return part == 0 ? 0 : part / whole;
  }

  private static Interval range(long high) {
    return new Interval(Value.of(0), true, Value.of(high), true);
  }
}
