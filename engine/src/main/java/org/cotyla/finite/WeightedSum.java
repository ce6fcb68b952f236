package org.cotyla.finite;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;
import org.jspecify.annotations.Nullable;

/** A sum of constants that each count when their literal holds, in whole multiples of one unit. */
final class WeightedSum implements Alternatives.Cutter {

  private record Part(int literal, BigDecimal weight) {}

  private final Circuit circuit;
  private final List<Part> parts = new ArrayList<>();

  WeightedSum(Circuit circuit) {
    this.circuit = circuit;
  }

  void add(int literal, BigDecimal weight) {
    parts.add(new Part(literal, weight));
  }

  private int decimals() {
    return parts.stream()
        .mapToInt(part -> Math.max(0, part.weight().stripTrailingZeros().scale()))
        .max()
        .orElse(0);
  }

  List<Circuit.Term> terms() {
    int decimals = decimals();
    return parts.stream()
        .map(part -> new Circuit.Term(part.literal(), units(part.weight(), decimals)))
        .toList();
  }

  private static long units(BigDecimal weight, int decimals) {
    return weight.movePointRight(decimals).longValueExact();
  }

  /** Everything from the least to the largest sum. */
  ValueSet range() {
    long low = weights().map(weight -> Math.min(0, weight)).sum();
    long high = weights().map(weight -> Math.max(0, weight)).sum();
    return ValueSet.between(ValueType.NUMBER, units(low), true, units(high), true);
  }

  private LongStream weights() {
    return terms().stream().mapToLong(Circuit.Term::weight);
  }

  @Override
  public int below(ValueSet below) {
    Interval hull = below.hull();
    return hull.high() instanceof Value.NumberValue
        ? -circuit.reaches(terms(), last(hull) + 1)
        : circuit.yes();
  }

  /** The multiples of the unit from end to end. */
  @Override
  public ValueSet possible(ValueSet values) {
    Interval hull = values.hull();
    if (!(hull.low() instanceof Value.NumberValue) || !(hull.high() instanceof Value.NumberValue)) {
      return values;
    }
    ValueSet whole =
        ValueSet.between(ValueType.NUMBER, units(first(hull)), true, units(last(hull)), true);
    return whole.isEmpty() ? values : whole;
  }

  private Value units(long units) {
    return Value.of(BigDecimal.valueOf(units, decimals()));
  }

  private long first(Interval hull) {
    BigDecimal low = number(hull.low()).movePointRight(decimals());
    return hull.lowIncluded()
        ? low.setScale(0, RoundingMode.CEILING).longValueExact()
        : low.setScale(0, RoundingMode.FLOOR).longValueExact() + 1;
  }

  private long last(Interval hull) {
    BigDecimal high = number(hull.high()).movePointRight(decimals());
    return hull.highIncluded()
        ? high.setScale(0, RoundingMode.FLOOR).longValueExact()
        : high.setScale(0, RoundingMode.CEILING).longValueExact() - 1;
  }

  private static BigDecimal number(@Nullable Value end) {
    return end instanceof Value.NumberValue number ? number.number() : BigDecimal.ZERO;
  }
}
