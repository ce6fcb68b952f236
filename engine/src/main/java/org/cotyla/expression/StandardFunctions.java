package org.cotyla.expression;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/** The built-in functions of FEEL (DMN clause 10.3.4) that formulas may call. */
public final class StandardFunctions {

  private StandardFunctions() {}

  public static List<FormulaFunction> all() {
    List<FormulaFunction> all = new ArrayList<>(numbers());
    all.addAll(TextFunctions.all());
    return List.copyOf(all);
  }

  private static List<FormulaFunction> numbers() {
    return List.of(
        new NumberFunction("min", 1, true, numbers -> numbers.stream().reduce(BigDecimal::min)),
        new NumberFunction("max", 1, true, numbers -> numbers.stream().reduce(BigDecimal::max)),
        rising("floor", number -> Rounding.round(number, 0, RoundingMode.FLOOR)),
        rising("ceiling", number -> Rounding.round(number, 0, RoundingMode.CEILING)),
        new Rounding("round half up", RoundingMode.HALF_UP),
        new Rounding("decimal", RoundingMode.HALF_EVEN),
        new NumberFunction("sqrt", 1, false, StandardFunctions::squareRoot),
        new AbsoluteValue());
  }

  private static FormulaFunction rising(String name, UnaryOperator<BigDecimal> formula) {
    return new NumberFunction(
        name, 1, false, numbers -> Optional.of(formula.apply(numbers.get(0))));
  }

  private static Optional<BigDecimal> squareRoot(List<BigDecimal> numbers) {
    BigDecimal number = numbers.get(0);
    return number.signum() < 0 ? Optional.empty() : Optional.of(number.sqrt(Value.ARITHMETIC));
  }

  /**
   * The size of a number without its sign: the positive part, and the negative part turned round.
   */
  private record AbsoluteValue() implements FormulaFunction {
    @Override
    public String name() {
      return "abs";
    }

    @Override
    public List<ValueType> parameters() {
      return List.of(ValueType.NUMBER);
    }

    @Override
    public ValueType result() {
      return ValueType.NUMBER;
    }

    @Override
    public PossibleValues apply(List<PossibleValues> arguments) {
      PossibleValues number = arguments.get(0);
      if (number.type() != ValueType.NUMBER) {
        return PossibleValues.nothing(ValueType.NUMBER);
      }
      PossibleValues zero = PossibleValues.of(Value.of(0));
      PossibleValues turned = RangeArithmetic.combine(ArithmeticSign.SUBTRACT, zero, number);
      ValueSet sizes =
          ValueSet.ofIntervals(
              ValueType.NUMBER, List.of(new Interval(Value.of(0), true, null, false)));
      ValueSet either = number.values().intersect(sizes).union(turned.values().intersect(sizes));
      return new PossibleValues(either, number.orNothing());
    }
  }
}
