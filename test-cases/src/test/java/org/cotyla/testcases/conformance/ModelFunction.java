package org.cotyla.testcases.conformance;

import java.util.List;
import java.util.function.Function;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/** A business knowledge model as a function that the engine's formulas may call. */
record ModelFunction(
    String name,
    List<ValueType> parameters,
    ValueType result,
    Function<List<FeelValue>, FeelValue> body)
    implements FormulaFunction {

  @Override
  public PossibleValues apply(List<PossibleValues> arguments) {
    if (!arguments.stream().allMatch(PossibleValues::isCertain)) {
      return new PossibleValues(ValueSet.all(result), true);
    }
    FeelValue value = body.apply(arguments.stream().map(FeelValue::of).toList());
    if (value instanceof FeelValue.Single single) {
      return PossibleValues.of(single.value());
    }
    if (value instanceof FeelValue.Null) {
      return PossibleValues.nothing(result);
    }
    throw new IllegalStateException("a list or context as the result of a call in a formula");
  }
}
