package org.cotyla.evaluate;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BinaryOperator;
import org.cotyla.expression.RangeSum;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;
import org.jspecify.annotations.Nullable;

/** The hit policies C+, C<, C> and C#: one value from the results of all matching rows. */
final class Aggregation {

  private Aggregation() {}

  /**
   * What the aggregate can be, given that at least one row matches.
   *
   * @param counting the rows that match, or may
   * @param output which output column
   */
  static PossibleValues of(HitPolicy policy, List<Firing> counting, int output, ValueType type) {
    return switch (policy) {
      case COUNT -> count(counting);
      case SUM -> fold(counting, output, type, RangeSum::add);
      case MINIMUM -> fold(counting, output, type, (a, b) -> extreme(a, b, -1));
      case MAXIMUM -> fold(counting, output, type, (a, b) -> extreme(a, b, 1));
      default -> throw new IllegalArgumentException(policy + " does not aggregate");
    };
  }

  /** Every matching row counts, also when two give the same (DMN 1.2 and later). */
  private static PossibleValues count(List<Firing> counting) {
    long certain = counting.stream().filter(Firing::certain).count();
    List<Value> counts = new ArrayList<>();
    for (long n = certain; n <= counting.size(); n++) {
      counts.add(Value.of(n));
    }
    return PossibleValues.of(ValueSet.of(ValueType.NUMBER, counts));
  }

  private static PossibleValues fold(
      List<Firing> counting, int output, ValueType type, BinaryOperator<PossibleValues> operation) {
    PossibleValues total = null;
    boolean anyCertain = false;
    for (Firing firing : counting) {
      if (firing.certain()) {
        PossibleValues result = firing.results().get(output);
        total = total == null ? result : operation.apply(total, result);
        anyCertain = true;
      }
    }
    for (Firing firing : counting) {
      if (!firing.certain()) {
        PossibleValues result = firing.results().get(output);
        PossibleValues with = total == null ? result : operation.apply(total, result);
        PossibleValues withOrWithout = total == null ? with : total.union(with);
        // Without any certain row, each possible one may be the only one that matches.
        total = anyCertain ? withOrWithout : withOrWithout.union(result);
      }
    }
    return total == null ? PossibleValues.nothing(type) : total;
  }

  private static PossibleValues extreme(PossibleValues a, PossibleValues b, int sign) {
    if (a.orNothing() || b.orNothing() || a.type() != b.type()) {
      return PossibleValues.nothing(a.type()).union(a).union(b);
    }
    Interval left = a.values().hull();
    Interval right = b.values().hull();
    return PossibleValues.of(
        ValueSet.between(
            a.type(),
            further(left.low(), right.low(), sign, -1),
            true,
            further(left.high(), right.high(), sign, 1),
            true));
  }

  /** The more extreme of two ends, where a missing end lies beyond every value on its side. */
  private static @Nullable Value further(@Nullable Value a, @Nullable Value b, int sign, int side) {
    if (a == null || b == null) {
      boolean beyondWins = sign == side;
      return beyondWins ? null : a == null ? b : a;
    }
    return Integer.signum(a.compareTo(b)) == sign ? a : b;
  }
}
