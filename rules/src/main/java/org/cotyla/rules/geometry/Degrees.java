package org.cotyla.rules.geometry;

/**
 * Trigonometry in degrees with the same digits on every machine, and exact where a right angle must
 * give exactly 0.
 */
final class Degrees {

  private Degrees() {}

  static double sin(double degrees) {
    return degrees > 45 ? plainCos(90 - degrees) : StrictMath.sin(StrictMath.toRadians(degrees));
  }

  static double cos(double degrees) {
    double size = StrictMath.abs(degrees);
    return size > 45 ? StrictMath.sin(StrictMath.toRadians(90 - size)) : plainCos(size);
  }

  private static double plainCos(double degrees) {
    return StrictMath.cos(StrictMath.toRadians(degrees));
  }

  static double asin(double ratio) {
    return StrictMath.toDegrees(StrictMath.asin(ratio));
  }

  static double acos(double ratio) {
    return StrictMath.toDegrees(StrictMath.acos(ratio));
  }

  static double atan2(double opposite, double adjacent) {
    return StrictMath.toDegrees(StrictMath.atan2(opposite, adjacent));
  }
}
