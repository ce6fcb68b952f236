package org.cotyla.expression;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/**
 * A function that has a result for all values and is worked out one by one: exact over finite sets
 * of arguments, and anything of its type over sets that are not finite or too many.
 *
 * @param name the name in plain words
 * @param parameters what each argument must be
 * @param takesAnyType whether arguments may be of any type instead
 * @param result what it gives
 * @param formula the result at single values
 */
record FiniteFunction(
    String name,
    List<ValueType> parameters,
    boolean takesAnyType,
    ValueType result,
    Function<List<Value>, Value> formula)
    implements FormulaFunction {

  /** How many combinations of arguments are worked out one by one. */
  private static final int COMBINATIONS_AT_MOST = 64;

  FiniteFunction {
    parameters = List.copyOf(parameters);
  }

  @Override
  public boolean accepts(ValueType type, int place) {
    return takesAnyType || FormulaFunction.super.accepts(type, place);
  }

  @Override
  public PossibleValues apply(List<PossibleValues> arguments) {
    boolean orNothing = arguments.stream().anyMatch(PossibleValues::orNothing);
    if (arguments.stream().anyMatch(argument -> argument.values().isEmpty())) {
      return PossibleValues.nothing(result);
    }
    if (!isFew(arguments)) {
      return new PossibleValues(ValueSet.all(result), orNothing);
    }
    List<Value> results = new ArrayList<>();
    collect(arguments, new ArrayList<>(), results);
    return new PossibleValues(ValueSet.of(result, results), orNothing);
  }

  private static boolean isFew(List<PossibleValues> arguments) {
    long combinations = 1;
    for (PossibleValues argument : arguments) {
      if (!argument.values().isFinite()) {
        return false;
      }
      combinations *= argument.values().parts().size();
      if (combinations > COMBINATIONS_AT_MOST) {
        return false;
      }
    }
    return true;
  }

  private void collect(List<PossibleValues> arguments, List<Value> chosen, List<Value> results) {
    if (chosen.size() == arguments.size()) {
      results.add(formula.apply(List.copyOf(chosen)));
      return;
    }
    for (Value value : arguments.get(chosen.size()).values().values()) {
      chosen.add(value);
      collect(arguments, chosen, results);
      chosen.remove(chosen.size() - 1);
    }
  }
}
