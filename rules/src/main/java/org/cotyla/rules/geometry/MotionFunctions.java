package org.cotyla.rules.geometry;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.expression.RangedArgument;
import org.cotyla.expression.RangedFunction;
import org.cotyla.expression.RangedFunction.Shape;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;

/**
 * Motion in one direction until the neck meets the rim. How it runs along each argument is not
 * proven, so over stretches it can be anything from 0 to half a turn.
 */
final class MotionFunctions {

  private static final List<RangedArgument> ARGUMENTS =
      List.of(
          RangedArgument.from(0, 90),
          RangedArgument.from(-90, 90),
          RangedArgument.from(-90, 90),
          RangedArgument.from(90, 180),
          RangedArgument.above(0, 200),
          RangedArgument.above(0, 200));

  private static final Interval HALF_TURN = new Interval(Value.of(0), true, Value.of(180), true);

  private MotionFunctions() {}

  static List<FormulaFunction> all() {
    return List.of(
        motion("flexion to impingement", ComponentMotion::flexion),
        motion("extension to impingement", ComponentMotion::extension),
        motion(
            "internal rotation at 90 flexion to impingement",
            motion -> motion.internalRotation(90)),
        motion("external rotation to impingement", motion -> motion.externalRotation(0)));
  }

  private static FormulaFunction motion(String name, ToDoubleFunction<ComponentMotion> reading) {
    return new RangedFunction(
        name, ARGUMENTS, HALF_TURN, Shape.ANY, n -> ComponentMotion.measure(n, reading));
  }
}
