package org.cotyla.expression;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/**
 * One argument of a {@link RangedFunction}.
 *
 * @param allowed where it makes sense; outside it there is no result
 * @param turningPoints where the function may change from rising to falling along this argument
 * @param uses how often the formula takes it, one after the other; an argument that pulls both ways
 *     is taken once for each way, so that the formula is monotone in each of them
 */
public record RangedArgument(Interval allowed, List<BigDecimal> turningPoints, int uses) {

  public RangedArgument {
    if (allowed.low() == null || allowed.high() == null) {
      throw new IllegalArgumentException("an argument needs both ends: " + allowed.plain());
    }
    turningPoints = List.copyOf(turningPoints);
  }

  /** From the lower to the upper number, both included. */
  public static RangedArgument from(long low, long high) {
    return new RangedArgument(
        new Interval(Value.of(low), true, Value.of(high), true), List.of(), 1);
  }

  /** Above the lower number, up to the upper one and with it. */
  public static RangedArgument above(long low, long high) {
    return new RangedArgument(
        new Interval(Value.of(low), false, Value.of(high), true), List.of(), 1);
  }

  /** Between the two numbers, without them. */
  public static RangedArgument between(long low, long high) {
    return new RangedArgument(
        new Interval(Value.of(low), false, Value.of(high), false), List.of(), 1);
  }

  public RangedArgument turningAt(long point) {
    return new RangedArgument(allowed, List.of(BigDecimal.valueOf(point)), uses);
  }

  public RangedArgument taken(int times) {
    return new RangedArgument(allowed, turningPoints, times);
  }

  ValueSet allowedSet() {
    return ValueSet.ofIntervals(ValueType.NUMBER, List.of(allowed));
  }

  /** The ends of the stretch and the turning points inside it. */
  List<BigDecimal> stops(Interval stretch) {
    List<BigDecimal> stops = new ArrayList<>();
    stops.add(RangeArithmetic.number(stretch.low()));
    if (!stretch.isPoint()) {
      stops.add(RangeArithmetic.number(stretch.high()));
    }
    Stream<BigDecimal> inside =
        turningPoints.stream().filter(point -> liesInside(Value.of(point), stretch));
    return Stream.concat(stops.stream(), inside).toList();
  }

  private static boolean liesInside(Value point, Interval stretch) {
    return stretch.contains(point) && !point.equals(stretch.low()) && !point.equals(stretch.high());
  }
}
