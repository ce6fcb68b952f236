package org.cotyla.rules.geometry;

/**
 * The turns about one axis in which the neck does not touch the rim: all within half the arc to
 * either side of its middle.
 *
 * @param middle the turn, in degrees, at which the neck is farthest from the rim
 * @param half how far it may turn from there; below 0 when it always touches, 180 when it never
 *     does
 */
record FreeArc(double middle, double half) {

  /** The search for a contact ends at half a turn. */
  private static final double HALF_TURN = 180;

  /**
   * The arc in which {@code constant + cosine * cos(turn) + sine * sin(turn)} is at least the
   * threshold.
   */
  static FreeArc where(double constant, double cosine, double sine, double threshold) {
    double most = StrictMath.hypot(cosine, sine);
    double rest = threshold - constant;
    double middle = Degrees.atan2(sine, cosine);
    if (rest > most) {
      return new FreeArc(middle, -1);
    }
    return new FreeArc(middle, rest <= -most ? HALF_TURN : Degrees.acos(rest / most));
  }

  /**
   * How far it may turn forwards from the start until the neck touches: 0 when it touches already,
   * 180 when it does not touch within half a turn.
   */
  double forwards(double start) {
    return limit(wrapped(start - middle));
  }

  /** The same, backwards. */
  double backwards(double start) {
    return limit(-wrapped(start - middle));
  }

  private double limit(double from) {
    if (half >= HALF_TURN) {
      return HALF_TURN;
    }
    return StrictMath.abs(from) > half ? 0 : StrictMath.min(HALF_TURN, half - from);
  }

  private static double wrapped(double degrees) {
    return StrictMath.IEEEremainder(degrees, 360);
  }
}
