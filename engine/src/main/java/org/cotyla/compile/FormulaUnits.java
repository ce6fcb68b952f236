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
  private record Named(String name, String unit) {}

  /** Tells every two names of the formula that are in two units where one is wanted. */
  void check(CellRef at, Expression formula) {
    unit(at, formula);
  }

  private Optional<Named> unit(CellRef at, Expression formula) {
    if (formula instanceof Expression.Reference reference) {
      String unit = units.getOrDefault(reference.symbol(), "");
      return unit.isEmpty()
          ? Optional.empty()
          : Optional.of(new Named(reference.symbol().name(), unit));
    }
    if (formula instanceof Expression.Negation negation) {
      return unit(at, negation.operand());
    }
    if (formula instanceof Expression.Arithmetic arithmetic) {
      boolean alike =
          arithmetic.sign() == ArithmeticSign.ADD || arithmetic.sign() == ArithmeticSign.SUBTRACT;
      Optional<Named> left = unit(at, arithmetic.left());
      Optional<Named> right = unit(at, arithmetic.right());
      return alike ? together(at, left, right) : Optional.empty();
    }
    if (formula instanceof Expression.Comparison comparison) {
      together(at, unit(at, comparison.left()), unit(at, comparison.right()));
    } else if (formula instanceof Expression.Logic logic) {
      unit(at, logic.left());
      unit(at, logic.right());
    } else if (formula instanceof Expression.Not not) {
      unit(at, not.operand());
    } else if (formula instanceof Expression.Conditional conditional) {
      unit(at, conditional.condition());
      return together(at, unit(at, conditional.whenTrue()), unit(at, conditional.otherwise()));
    } else if (formula instanceof Expression.Call call) {
      call.arguments().forEach(argument -> unit(at, argument));
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
