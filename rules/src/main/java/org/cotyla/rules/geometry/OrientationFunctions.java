package org.cotyla.rules.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.expression.RangedArgument;
import org.cotyla.expression.RangedFunction;
import org.cotyla.expression.RangedFunction.Shape;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;

/**
 * The twelve conversions between the three ways to tell a cup's orientation.
 *
 * <p>Each rises or falls all along the inclination. Along the anteversion each anteversion rises,
 * and each inclination depends on its cosine alone, so it turns at 0.
 */
final class OrientationFunctions {

  private static final List<RangedArgument> ARGUMENTS =
      List.of(RangedArgument.between(0, 90), RangedArgument.between(-90, 90).turningAt(0));

  private OrientationFunctions() {}

  static List<FormulaFunction> all() {
    List<FormulaFunction> all = new ArrayList<>();
    for (OrientationSystem from : OrientationSystem.values()) {
      for (OrientationSystem to : OrientationSystem.values()) {
        if (from != to) {
          all.add(conversion("inclination", from, to, to::inclination, range(0, 90)));
          all.add(conversion("anteversion", from, to, to::anteversion, range(-90, 90)));
        }
      }
    }
    return all;
  }

  private static FormulaFunction conversion(
      String angle,
      OrientationSystem from,
      OrientationSystem to,
      ToDoubleFunction<Direction> reading,
      Interval results) {
    return new RangedFunction(
        word(to) + " " + angle + " from " + word(from),
        ARGUMENTS,
        results,
        Shape.MONOTONE,
        angles -> OptionalDouble.of(reading.applyAsDouble(from.direction(angles[0], angles[1]))));
  }

  private static String word(OrientationSystem system) {
    return system.name().toLowerCase(Locale.ROOT);
  }

  private static Interval range(long low, long high) {
    return new Interval(Value.of(low), true, Value.of(high), true);
  }
}
