package org.cotyla.finite;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
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

  private static BigInteger units(BigDecimal weight, int decimals) {
    return weight.movePointRight(decimals).toBigIntegerExact();
  }

  /** Whether no sum of some of the parts has more digits than arithmetic keeps. */
  boolean isExact() {
    BigInteger most = weights().map(BigInteger::abs).reduce(BigInteger.ZERO, BigInteger::add);
    return new BigDecimal(most).precision() <= Value.ARITHMETIC.getPrecision();
  }

  /** Everything from the least to the largest sum. */
  ValueSet range() {
    BigInteger low = weights().map(BigInteger.ZERO::min).reduce(BigInteger.ZERO, BigInteger::add);
    BigInteger high = weights().map(BigInteger.ZERO::max).reduce(BigInteger.ZERO, BigInteger::add);
    return ValueSet.between(ValueType.NUMBER, units(low), true, units(high), true);
  }

  private Stream<BigInteger> weights() {
    return terms().stream().map(Circuit.Term::weight);
  }

  @Override
  public int below(ValueSet below) {
    Interval hull = below.hull();
    return hull.high() instanceof Value.NumberValue
        ? -circuit.reaches(terms(), last(hull).add(BigInteger.ONE))
        : circuit.yes();
  }

  /** The multiples of the unit from end to end. */
  @Override
  public ValueSet possible(ValueSet values) {
    Interval hull = values.hull();
    if (!(hull.low() instanceof Value.NumberValue) || !(hull.high() instanceof Value.NumberValue)) {
      return values;
    }
    return ValueSet.between(ValueType.NUMBER, units(first(hull)), true, units(last(hull)), true);
  }

  private Value units(BigInteger units) {
    return Value.of(new BigDecimal(units, decimals()));
  }

  private BigInteger first(Interval hull) {
    BigDecimal low = number(hull.low()).movePointRight(decimals());
    return hull.lowIncluded()
        ? low.setScale(0, RoundingMode.CEILING).toBigIntegerExact()
        : low.setScale(0, RoundingMode.FLOOR).toBigIntegerExact().add(BigInteger.ONE);
  }

  private BigInteger last(Interval hull) {
    BigDecimal high = number(hull.high()).movePointRight(decimals());
    return hull.highIncluded()
        ? high.setScale(0, RoundingMode.FLOOR).toBigIntegerExact()
        : high.setScale(0, RoundingMode.CEILING).toBigIntegerExact().subtract(BigInteger.ONE);
  }

  private static BigDecimal number(@Nullable Value end) {
    return end instanceof Value.NumberValue number ? number.number() : BigDecimal.ZERO;
  }
}
