package org.cotyla.expression;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/**
 * A function of numbers that only rises or only falls in each of its arguments, so that its range
 * over ranges lies between the results at the ends.
 *
 * @param name the name in plain words
 * @param arity how many arguments; the last may repeat when variadic
 * @param isVariadic whether the last argument may be repeated
 * @param formula the result at single numbers, or empty where there is none
 */
public record NumberFunction(
    String name,
    int arity,
    boolean isVariadic,
    Function<List<BigDecimal>, Optional<BigDecimal>> formula)
    implements FormulaFunction {

  /** Beyond so many open arguments their ends are not all tried. */
  private static final int OPEN_AT_MOST = 10;

  @Override
  public List<ValueType> parameters() {
    return Collections.nCopies(arity, ValueType.NUMBER);
  }

  @Override
  public ValueType result() {
    return ValueType.NUMBER;
  }

  @Override
  public PossibleValues apply(List<PossibleValues> arguments) {
    boolean orNothing = arguments.stream().anyMatch(PossibleValues::orNothing);
    if (arguments.stream().anyMatch(argument -> argument.values().isEmpty())) {
      return PossibleValues.nothing(ValueType.NUMBER);
    }
    List<Interval> hulls = arguments.stream().map(argument -> argument.values().hull()).toList();
    boolean tooMany = hulls.stream().filter(hull -> !hull.isPoint()).count() > OPEN_AT_MOST;
    if (tooMany || hulls.stream().anyMatch(hull -> hull.low() == null || hull.high() == null)) {
      return new PossibleValues(ValueSet.all(ValueType.NUMBER), true);
    }
    List<Optional<BigDecimal>> corners = new ArrayList<>();
    collectCorners(hulls, new ArrayList<>(), corners);
    if (corners.stream().anyMatch(Optional::isEmpty)) {
      return corners.stream().allMatch(Optional::isEmpty)
              && hulls.stream().allMatch(Interval::isPoint)
          ? PossibleValues.nothing(ValueType.NUMBER)
          : new PossibleValues(ValueSet.all(ValueType.NUMBER), true);
    }
    List<Value> results = corners.stream().flatMap(Optional::stream).map(Value::of).toList();
    Value low = Collections.min(results);
    Value high = Collections.max(results);
    ValueSet range = ValueSet.between(ValueType.NUMBER, low, true, high, true);
    return new PossibleValues(range, orNothing);
  }

  private void collectCorners(
      List<Interval> hulls, List<BigDecimal> chosen, List<Optional<BigDecimal>> corners) {
    if (chosen.size() == hulls.size()) {
      corners.add(formula.apply(List.copyOf(chosen)));
      return;
    }
    Interval next = hulls.get(chosen.size());
    List<BigDecimal> ends = new ArrayList<>();
    ends.add(RangeArithmetic.number(next.low()));
    if (!next.isPoint()) {
      ends.add(RangeArithmetic.number(next.high()));
    }
    for (BigDecimal end : ends) {
      chosen.add(end);
      collectCorners(hulls, chosen, corners);
      chosen.remove(chosen.size() - 1);
    }
  }
}
