package org.cotyla.rules.geometry;

/**
 * Another way to the same contacts, by turning the neck step by step: a rotation about the shaft,
 * then flexion, then the angle to the cup's axis.
 */
record RimModel(
    double inclination,
    double anteversion,
    double stemVersion,
    double neckShaft,
    double head,
    double neck) {

  /** Degrees between neck and rim; below 0 the neck is in the rim. */
  double clearance(double flexion, double internalRotation) {
    double[] axis = towardsFront(aboutY(new double[] {0, 0, 1}, inclination));
    double[] direction = aboutY(new double[] {0, 0, 1}, 180 - neckShaft);
    direction = aboutZ(direction, internalRotation - stemVersion);
    direction = aboutX(direction, flexion);
    double cos = axis[0] * direction[0] + axis[1] * direction[1] + axis[2] * direction[2];
    double angle = StrictMath.toDegrees(StrictMath.acos(StrictMath.min(1, cos)));
    return 90 - StrictMath.toDegrees(StrictMath.asin(neck / head)) - angle;
  }

  /** Out of the coronal plane, which is what radiographic anteversion means. */
  private double[] towardsFront(double[] inPlane) {
    double cos = StrictMath.cos(StrictMath.toRadians(anteversion));
    double sin = StrictMath.sin(StrictMath.toRadians(anteversion));
    return new double[] {inPlane[0] * cos, sin, inPlane[2] * cos};
  }

  /** From the feet to the side. */
  private static double[] aboutY(double[] v, double degrees) {
    double cos = StrictMath.cos(StrictMath.toRadians(degrees));
    double sin = StrictMath.sin(StrictMath.toRadians(degrees));
    return new double[] {v[0] * cos + v[2] * sin, v[1], v[2] * cos - v[0] * sin};
  }

  /** From the feet to the front. */
  private static double[] aboutX(double[] v, double degrees) {
    double cos = StrictMath.cos(StrictMath.toRadians(degrees));
    double sin = StrictMath.sin(StrictMath.toRadians(degrees));
    return new double[] {v[0], v[1] * cos + v[2] * sin, v[2] * cos - v[1] * sin};
  }

  /** From the side to the front. */
  private static double[] aboutZ(double[] v, double degrees) {
    double cos = StrictMath.cos(StrictMath.toRadians(degrees));
    double sin = StrictMath.sin(StrictMath.toRadians(degrees));
    return new double[] {v[0] * cos - v[1] * sin, v[0] * sin + v[1] * cos, v[2]};
  }
}
