package org.cotyla.compile;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.expression.ArithmeticSign;
import org.cotyla.expression.Expression;
import org.cotyla.expression.Symbol;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issues;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.Field;

/**
 * Holds the units of names in a formula against each other: millimetres are not added to years, nor
 * compared with them. A number without a name takes the unit that it stands beside; what is
 * multiplied, divided or given to a function has a unit that is not known here.
 */
final class FormulaUnits {

  private final Map<Symbol, String> units = new HashMap<>();
  private final Issues issues;

  FormulaUnits(List<Field> fields, List<Calculation> calculations, Issues issues) {
    this.issues = issues;
    fields.forEach(field -> units.put(field.symbol(), field.unit()));
    calculations.forEach(calculation -> units.put(calculation.symbol(), calculation.unit()));
  }

  /** A name whose unit the formula has. */
  record Named(String name, String unit) {}

  /** The unit of a name; empty for none. */
  String of(Symbol name) {
    return units.getOrDefault(name, "");
  }

  /**
   * Tells every two names of the formula that are in two units where one is wanted.
   *
   * @return a name that has the unit of the whole, when that is known
   */
  Optional<Named> check(CellRef at, Expression formula) {
    if (formula instanceof Expression.Reference reference) {
      String unit = of(reference.symbol());
      return unit.isEmpty()
          ? Optional.empty()
          : Optional.of(new Named(reference.symbol().name(), unit));
    }
    if (formula instanceof Expression.Negation negation) {
      return check(at, negation.operand());
    }
    if (formula instanceof Expression.Arithmetic arithmetic) {
      boolean alike =
          arithmetic.sign() == ArithmeticSign.ADD || arithmetic.sign() == ArithmeticSign.SUBTRACT;
      Optional<Named> left = check(at, arithmetic.left());
      Optional<Named> right = check(at, arithmetic.right());
      return alike ? together(at, left, right) : Optional.empty();
    }
    if (formula instanceof Expression.Comparison comparison) {
      together(at, check(at, comparison.left()), check(at, comparison.right()));
    } else if (formula instanceof Expression.Logic logic) {
      check(at, logic.left());
      check(at, logic.right());
    } else if (formula instanceof Expression.Not not) {
      check(at, not.operand());
    } else if (formula instanceof Expression.Conditional conditional) {
      check(at, conditional.condition());
      return together(at, check(at, conditional.whenTrue()), check(at, conditional.otherwise()));
    } else if (formula instanceof Expression.Call call) {
      call.arguments().forEach(argument -> check(at, argument));
    }
    return Optional.empty();
  }

  private Optional<Named> together(CellRef at, Optional<Named> one, Optional<Named> other) {
    boolean differ =
        one.isPresent() && other.isPresent() && !one.get().unit().equals(other.get().unit());
    if (differ) {
      issues.error(
          "W174",
          at,
          "`"
              + one.get().name()
              + "` is in "
              + one.get().unit()
              + ", but `"
              + other.get().name()
              + "`, which it is put together with, is in "
              + other.get().unit(),
          "state both in one unit, or multiply by what turns the one into the other");
    }
    return one.or(() -> other);
  }
}
