package org.cotyla.rules.geometry;

/**
 * A direction in the frame of the pelvis, of length 1.
 *
 * @param lateral towards the side
 * @param anterior towards the front
 * @param caudal towards the feet
 */
record Direction(double lateral, double anterior, double caudal) {

  /** This direction after the thigh is flexed: what pointed to the feet now points forward. */
  Direction flexed(double degrees) {
    double cos = Degrees.cos(degrees);
    double sin = Degrees.sin(degrees);
    return new Direction(lateral, anterior * cos + caudal * sin, caudal * cos - anterior * sin);
  }
}
