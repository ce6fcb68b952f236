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
public final class Aggregation {

  private Aggregation() {}

  /**
   * What the aggregate can be, given that at least one row matches.
   *
   * @param counting the rows that match, or may
   * @param output which output column
   */
  public static PossibleValues of(
      HitPolicy policy, List<Firing> counting, int output, ValueType type) {
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
    for (long n = Math.max(1, certain); n <= counting.size(); n++) {
      counts.add(Value.of(n));
    }
    return PossibleValues.of(ValueSet.of(ValueType.NUMBER, counts));
  }

  private static PossibleValues fold(
      List<Firing> counting, int output, ValueType type, BinaryOperator<PossibleValues> operation) {
    // In the order of the sheet, so that every digit is rounded as it would be for complete data.
    PossibleValues total = null;
    boolean noneSoFar = true;
    for (Firing firing : counting) {
      PossibleValues result = firing.results().get(output);
      PossibleValues with = total == null ? result : operation.apply(total, result);
      if (noneSoFar) {
        with = with.union(result);
      }
      total = firing.certain() || total == null ? with : total.union(with);
      noneSoFar &= !firing.certain();
    }
    return total == null ? PossibleValues.nothing(type) : total;
  }

  private static PossibleValues extreme(PossibleValues a, PossibleValues b, int sign) {
    if (a.isNothing() || b.isNothing() || a.type() != b.type()) {
      return PossibleValues.nothing(a.type());
    }
    Interval left = a.values().hull();
    Interval right = b.values().hull();
    return new PossibleValues(
        ValueSet.between(
            a.type(),
            further(left.low(), right.low(), sign, -1),
            true,
            further(left.high(), right.high(), sign, 1),
            true),
        a.orNothing() || b.orNothing());
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
