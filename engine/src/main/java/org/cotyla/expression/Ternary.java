package org.cotyla.expression;

import java.util.function.BinaryOperator;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;
import org.jspecify.annotations.Nullable;

/**
 * Which of the standard's three outcomes a condition can have: true, false, or null.
 *
 * @param canBeTrue whether some possible values make it true
 * @param canBeFalse whether some make it false
 * @param canBeNull whether some make it neither, for example a comparison with nothing
 */
record Ternary(boolean canBeTrue, boolean canBeFalse, boolean canBeNull) {

  static final Ternary NULL = new Ternary(false, false, true);

  static Ternary of(boolean outcome) {
    return new Ternary(outcome, !outcome, false);
  }

  static Ternary of(Truth truth) {
    return new Ternary(truth != Truth.FALSE, truth != Truth.TRUE, false);
  }

  /** The outcomes of a value that should be yes or no; any other value counts as null. */
  static Ternary of(PossibleValues value) {
    if (value.type() != ValueType.YES_NO) {
      return NULL;
    }
    return new Ternary(
        value.values().contains(Value.of(true)),
        value.values().contains(Value.of(false)),
        value.orNothing());
  }

  PossibleValues toValues() {
    ValueSet values = ValueSet.none(ValueType.YES_NO);
    if (canBeTrue) {
      values = values.union(ValueSet.of(Value.of(true)));
    }
    if (canBeFalse) {
      values = values.union(ValueSet.of(Value.of(false)));
    }
    return new PossibleValues(values, canBeNull);
  }

  /** Whether a cell with these outcomes matches: only true is a match. */
  Truth matches() {
    if (!canBeTrue) {
      return Truth.FALSE;
    }
    return canBeFalse || canBeNull ? Truth.OPEN : Truth.TRUE;
  }

  Ternary not() {
    return new Ternary(canBeFalse, canBeTrue, canBeNull);
  }

  Ternary either(Ternary other) {
    return new Ternary(
        canBeTrue || other.canBeTrue, canBeFalse || other.canBeFalse, canBeNull || other.canBeNull);
  }

  Ternary and(Ternary other) {
    return combine(
        other,
        (a, b) -> {
          if (Boolean.FALSE.equals(a) || Boolean.FALSE.equals(b)) {
            return false;
          }
          return a == null || b == null ? null : Boolean.TRUE;
        });
  }

  Ternary or(Ternary other) {
    return not().and(other.not()).not();
  }

  private Ternary combine(Ternary other, BinaryOperator<@Nullable Boolean> table) {
    boolean canBeTrue = false;
    boolean canBeFalse = false;
    boolean canBeNull = false;
    @Nullable Boolean[] outcomes = {true, false, null};
    for (Boolean a : outcomes) {
      for (Boolean b : outcomes) {
        if (allows(a) && other.allows(b)) {
          Boolean result = table.apply(a, b);
          canBeTrue |= Boolean.TRUE.equals(result);
          canBeFalse |= Boolean.FALSE.equals(result);
          canBeNull |= result == null;
        }
      }
    }
    return new Ternary(canBeTrue, canBeFalse, canBeNull);
  }

  private boolean allows(@Nullable Boolean outcome) {
    return outcome == null ? canBeNull : outcome ? canBeTrue : canBeFalse;
  }
}
