package org.cotyla.rules.geometry;

/**
 * How the way a cup faces is told in two angles (MURRAY-1993; the equations are derived here).
 *
 * <p>In each system an inclination above 0 and below 90 with an anteversion between -90 and 90
 * names one direction that faces outwards and downwards, and every such direction has one name.
 */
enum OrientationSystem {
  /** As on a film: inclination in the coronal plane, anteversion out of it. */
  RADIOGRAPHIC {
    @Override
    Direction direction(double inclination, double anteversion) {
      double inPlane = Degrees.cos(anteversion);
      return new Direction(
          inPlane * Degrees.sin(inclination),
          Degrees.sin(anteversion),
          inPlane * Degrees.cos(inclination));
    }

    @Override
    double inclination(Direction axis) {
      return Degrees.atan2(axis.lateral(), axis.caudal());
    }

    @Override
    double anteversion(Direction axis) {
      return Degrees.atan2(axis.anterior(), StrictMath.hypot(axis.lateral(), axis.caudal()));
    }
  },

  /** As in theatre: inclination out of the sagittal plane, anteversion is flexion within it. */
  OPERATIVE {
    @Override
    Direction direction(double inclination, double anteversion) {
      double inPlane = Degrees.cos(inclination);
      return new Direction(
          Degrees.sin(inclination),
          inPlane * Degrees.sin(anteversion),
          inPlane * Degrees.cos(anteversion));
    }

    @Override
    double inclination(Direction axis) {
      return Degrees.atan2(axis.lateral(), StrictMath.hypot(axis.anterior(), axis.caudal()));
    }

    @Override
    double anteversion(Direction axis) {
      return Degrees.atan2(axis.anterior(), axis.caudal());
    }
  },

  /** As on the bone: inclination from the body's long axis, anteversion round it. */
  ANATOMIC {
    @Override
    Direction direction(double inclination, double anteversion) {
      double outward = Degrees.sin(inclination);
      return new Direction(
          outward * Degrees.cos(anteversion),
          outward * Degrees.sin(anteversion),
          Degrees.cos(inclination));
    }

    @Override
    double inclination(Direction axis) {
      return Degrees.atan2(StrictMath.hypot(axis.lateral(), axis.anterior()), axis.caudal());
    }

    @Override
    double anteversion(Direction axis) {
      return Degrees.atan2(axis.anterior(), axis.lateral());
    }
  };

  /** The way the cup's opening faces. */
  abstract Direction direction(double inclination, double anteversion);

  abstract double inclination(Direction axis);

  abstract double anteversion(Direction axis);
}
