package org.cotyla.expression;

import java.util.Optional;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/** The comparisons of S-FEEL, over possible values. */
public enum Relation {
  EQUAL("="),
  UNEQUAL("!="),
  LESS("<"),
  AT_MOST("<="),
  GREATER(">"),
  AT_LEAST(">=");

  private final String sign;

  Relation(String sign) {
    this.sign = sign;
  }

  public String sign() {
    return sign;
  }

  /** Whether the relation needs an order, not only equality. */
  public boolean isOrder() {
    return this != EQUAL && this != UNEQUAL;
  }

  /** The values that stand in this relation to the limit. */
  ValueSet region(Value limit) {
    ValueType type = limit.type();
    return switch (this) {
      case EQUAL -> ValueSet.of(limit);
      case UNEQUAL -> ValueSet.of(limit).complement();
      case LESS -> ValueSet.between(type, null, false, limit, false);
      case AT_MOST -> ValueSet.between(type, null, false, limit, true);
      case GREATER -> ValueSet.between(type, limit, false, null, false);
      case AT_LEAST -> ValueSet.between(type, limit, true, null, false);
    };
  }

  Ternary compare(PossibleValues left, PossibleValues right) {
    Optional<Ternary> outcome = Optional.empty();
    boolean bothValues = !left.values().isEmpty() && !right.values().isEmpty();
    if (bothValues) {
      outcome = Optional.of(compareValues(left.values(), right.values()));
    }
    if (left.orNothing() && right.orNothing()) {
      outcome = Optional.of(orElse(outcome, isOrder() ? Ternary.NULL : Ternary.of(this == EQUAL)));
    }
    boolean oneNothing =
        (left.orNothing() && !right.values().isEmpty())
            || (right.orNothing() && !left.values().isEmpty());
    if (oneNothing) {
      outcome = Optional.of(orElse(outcome, isOrder() ? Ternary.NULL : Ternary.of(this != EQUAL)));
    }
    return outcome.orElse(Ternary.NULL);
  }

  private static Ternary orElse(Optional<Ternary> before, Ternary more) {
    return before.map(more::either).orElse(more);
  }

  private Ternary compareValues(ValueSet left, ValueSet right) {
    if (left.type() != right.type() || (isOrder() && left.type() == ValueType.YES_NO)) {
      return Ternary.NULL;
    }
    return Ternary.of(truth(left, right));
  }

  /** Whether values of two sets of one ordered type, neither of them empty, stand in it. */
  public Truth truth(ValueSet left, ValueSet right) {
    return switch (this) {
      case EQUAL -> equal(left, right);
      case UNEQUAL -> equal(left, right).not();
      case LESS -> less(left, right);
      case AT_MOST -> less(right, left).not();
      case GREATER -> less(right, left);
      case AT_LEAST -> less(left, right).not();
    };
  }

  private static Truth equal(ValueSet left, ValueSet right) {
    if (!left.intersects(right)) {
      return Truth.FALSE;
    }
    return left.single().isPresent() && right.single().isPresent() ? Truth.TRUE : Truth.OPEN;
  }

  private static Truth less(ValueSet left, ValueSet right) {
    Interval a = left.hull();
    Interval b = right.hull();
    if (alwaysLess(a, b)) {
      return Truth.TRUE;
    }
    return neverLess(a, b) ? Truth.FALSE : Truth.OPEN;
  }

  private static boolean alwaysLess(Interval a, Interval b) {
    if (a.high() == null || b.low() == null) {
      return false;
    }
    int order = a.high().compareTo(b.low());
    return order < 0 || (order == 0 && !(a.highIncluded() && b.lowIncluded()));
  }

  private static boolean neverLess(Interval a, Interval b) {
    return a.low() != null && b.high() != null && a.low().compareTo(b.high()) >= 0;
  }
}
