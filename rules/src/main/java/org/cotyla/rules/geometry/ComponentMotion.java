package org.cotyla.rules.geometry;

import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * A head and neck in a cup whose opening plane goes through the head's centre: how far the thigh
 * may turn until the neck meets the rim. Bone and soft tissue are not in it.
 *
 * @param cup the way the cup's opening faces
 * @param stemVersion how far the neck points forward of the coronal plane
 * @param lean the angle between the neck and the shaft, as the rest to a straight line
 * @param contact the cosine between neck and cup axis below which the neck is in the rim
 */
record ComponentMotion(Direction cup, double stemVersion, double lean, double contact) {

  /**
   * What is asked of an implant, or nothing when its neck is thicker than its head.
   *
   * @param numbers radiographic inclination and anteversion, stem version, neck-shaft angle, head
   *     diameter and neck diameter
   */
  static OptionalDouble measure(double[] numbers, ToDoubleFunction<ComponentMotion> reading) {
    Direction cup = OrientationSystem.RADIOGRAPHIC.direction(numbers[0], numbers[1]);
    OptionalDouble swing = HeadFunctions.oscillationAngle(numbers[4], numbers[5], 0);
    return swing.isEmpty()
        ? swing
        : OptionalDouble.of(
            reading.applyAsDouble(
                new ComponentMotion(
                    cup, numbers[2], 180 - numbers[3], Degrees.cos(swing.getAsDouble() / 2))));
  }

  double flexion() {
    return inFlexion().forwards(0);
  }

  double extension() {
    return inFlexion().backwards(0);
  }

  /** Turning inwards swings the neck backwards about the shaft, so that its version falls. */
  double internalRotation(double flexion) {
    return aboutTheShaft(flexion).backwards(stemVersion);
  }

  double externalRotation(double flexion) {
    return aboutTheShaft(flexion).forwards(stemVersion);
  }

  /**
   * The neck in a thigh that is flexed by f has the share {@code A + B cos f + C sin f} along the
   * cup's axis.
   */
  private FreeArc inFlexion() {
    Direction neck = neck();
    return FreeArc.where(
        neck.lateral() * cup.lateral(),
        neck.anterior() * cup.anterior() + neck.caudal() * cup.caudal(),
        neck.caudal() * cup.anterior() - neck.anterior() * cup.caudal(),
        contact);
  }

  /**
   * Seen from the flexed thigh the cup is turned back instead, and the neck of version w has the
   * share {@code A + B cos w + C sin w} along its axis.
   */
  private FreeArc aboutTheShaft(double flexion) {
    Direction seen = cup.flexed(-flexion);
    double out = Degrees.sin(lean);
    return FreeArc.where(
        Degrees.cos(lean) * seen.caudal(), out * seen.lateral(), -out * seen.anterior(), contact);
  }

  /** From the head's centre down the neck. */
  private Direction neck() {
    double out = Degrees.sin(lean);
    return new Direction(
        out * Degrees.cos(stemVersion), -out * Degrees.sin(stemVersion), Degrees.cos(lean));
  }
}
