package org.cotyla.expression;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/**
 * A function of measurements whose arguments each have a range that makes sense: it is worked out
 * in binary numbers, its result is rounded to 9 decimals, and outside those ranges there is none.
 *
 * <p>Finite sets of arguments are worked out one by one. Over stretches the result of a monotone
 * function lies between the results at the ends and turning points; of any other function it is
 * only known to be one of its results.
 *
 * @param name the name in plain words
 * @param arguments what each argument may be
 * @param results where every result lies
 * @param shape whether ends and turning points suffice
 * @param formula the result at single numbers
 */
public record RangedFunction(
    String name, List<RangedArgument> arguments, Interval results, Shape shape, Formula formula)
    implements FormulaFunction {

  /** How a function runs along each argument while the others stand still. */
  public enum Shape {
    /** Between two turning points of an argument it only rises or only falls along it. */
    MONOTONE,
    /** Nothing is proven. */
    ANY
  }

  /** The result at single numbers, reached with nothing but {@link StrictMath}. */
  @FunctionalInterface
  public interface Formula {
    /**
     * The result, or empty where the numbers do not go together. It is also asked at the ends that
     * an argument's range leaves out; and where it is not empty at all corners of a box it must not
     * be empty inside.
     */
    OptionalDouble at(double... numbers);
  }

  private static final int DECIMALS = 9;

  /** Rounding can lift a result inside a range by one last decimal over those at its ends. */
  private static final BigDecimal LAST_DECIMAL = BigDecimal.ONE.movePointLeft(DECIMALS);

  /** How many combinations are worked out one by one; beyond it the ranges are joined first. */
  private static final int COMBINATIONS_AT_MOST = 256;

  public RangedFunction {
    arguments = List.copyOf(arguments);
  }

  @Override
  public List<ValueType> parameters() {
    return Collections.nCopies(arguments.size(), ValueType.NUMBER);
  }

  @Override
  public ValueType result() {
    return ValueType.NUMBER;
  }

  @Override
  public PossibleValues apply(List<PossibleValues> given) {
    PossibleValues nothing = PossibleValues.nothing(ValueType.NUMBER);
    boolean orNothing = false;
    List<ValueSet> usable = new ArrayList<>();
    for (int i = 0; i < arguments.size(); i++) {
      ValueSet values = given.get(i).values();
      if (values.isEmpty()) {
        return nothing;
      }
      ValueSet inside = values.intersect(arguments.get(i).allowedSet());
      if (inside.isEmpty()) {
        return nothing;
      }
      orNothing |= given.get(i).orNothing() || !inside.equals(values);
      usable.add(inside);
    }
    return Boxes.of(usable, COMBINATIONS_AT_MOST).stream()
        .map(this::over)
        .reduce(PossibleValues::union)
        .map(orNothing ? nothing::union : found -> found)
        .orElse(nothing);
  }

  private PossibleValues over(List<Interval> box) {
    List<List<BigDecimal>> stops = new ArrayList<>();
    for (int i = 0; i < box.size(); i++) {
      stops.addAll(
          Collections.nCopies(arguments.get(i).uses(), arguments.get(i).stops(box.get(i))));
    }
    List<Optional<BigDecimal>> corners = Boxes.corners(stops).stream().map(this::single).toList();
    boolean orNothing = corners.stream().anyMatch(Optional::isEmpty);
    List<BigDecimal> found = corners.stream().flatMap(Optional::stream).toList();
    if (box.stream().allMatch(Interval::isPoint)) {
      List<Value> values = found.stream().<Value>map(Value::of).toList();
      return new PossibleValues(ValueSet.of(ValueType.NUMBER, values), orNothing);
    }
    ValueSet everyResult = ValueSet.ofIntervals(ValueType.NUMBER, List.of(results));
    if (orNothing || shape == Shape.ANY) {
      return new PossibleValues(everyResult, orNothing);
    }
    Value low = Value.of(Collections.min(found).subtract(LAST_DECIMAL));
    Value high = Value.of(Collections.max(found).add(LAST_DECIMAL));
    ValueSet between = ValueSet.between(ValueType.NUMBER, low, true, high, true);
    return PossibleValues.of(between.intersect(everyResult));
  }

  private Optional<BigDecimal> single(List<BigDecimal> numbers) {
    OptionalDouble result =
        formula.at(numbers.stream().mapToDouble(BigDecimal::doubleValue).toArray());
    return result.isPresent() && Double.isFinite(result.getAsDouble())
        ? Optional.of(
            BigDecimal.valueOf(result.getAsDouble()).setScale(DECIMALS, RoundingMode.HALF_EVEN))
        : Optional.empty();
  }
}
