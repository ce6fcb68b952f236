package org.cotyla.compile;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.draft.Text;
import org.cotyla.expression.CellTest;
import org.cotyla.expression.Expression;
import org.cotyla.expression.PreparedTest;
import org.cotyla.expression.Symbol;
import org.cotyla.issue.Issues;
import org.cotyla.protocol.Field;
import org.cotyla.value.Truth;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/** Tests that can be read but cannot mean what their author wanted. */
final class TestRemarks {

  private final FormulaUnits units;
  private final Map<Symbol, ValueSet> allowed = new HashMap<>();
  private final Issues issues;

  TestRemarks(List<Field> fields, FormulaUnits units, Issues issues) {
    this.units = units;
    this.issues = issues;
    fields.forEach(field -> allowed.put(field.symbol(), field.allowed()));
  }

  void check(Text cell, Symbol input, PreparedTest test) {
    differenceForRange(cell, test.test());
    test.test().parts().forEach(endpoint -> unit(cell, input, endpoint));
    neverHolds(cell, input, test);
  }

  /** What a cell gives in every case must be what its name allows. */
  void result(Text cell, Symbol output, Expression result, Map<Symbol, Value> constants) {
    ValueSet possible = allowed.getOrDefault(output, ValueSet.all(output.type()));
    if (output.type() != ValueType.NUMBER || !constants.keySet().containsAll(result.references())) {
      return;
    }
    result
        .evaluate(CalculationCompiler.scope(constants))
        .single()
        .filter(value -> value.type() == output.type() && !possible.contains(value))
        .ifPresent(
            value ->
                issues.error(
                    "W175",
                    cell.at(),
                    "`" + value.plain() + "` is outside what `" + output.name() + "` can be",
                    "allowed: "
                        + possible.plain()
                        + "; check the number, and the allowed values in the sheet Fields"));
  }

  /** {@code 7-15} is a difference, and nobody writes one where a number is meant. */
  private void differenceForRange(Text cell, CellTest test) {
    for (Expression part : test.parts()) {
      boolean twoNumbers =
          part instanceof Expression.Arithmetic sum
              && sum.left() instanceof Expression.Literal low
              && low.value() instanceof Value.NumberValue
              && sum.right() instanceof Expression.Literal;
      if (twoNumbers) {
        issues.error(
            "W171",
            cell.at(),
            "`" + cell.text() + "` is arithmetic with two numbers",
            "write the number itself; a range is written [7..15]");
      }
    }
  }

  /** A value in another unit would be compared, or given, as if it were in the same. */
  void unit(Text cell, Symbol name, Expression formula) {
    Optional<FormulaUnits.Named> theirs = units.check(cell.at(), formula);
    String ours = units.of(name);
    if (theirs.isPresent() && !ours.isEmpty() && !ours.equals(theirs.get().unit())) {
      issues.error(
          "W172",
          cell.at(),
          "`"
              + theirs.get().name()
              + "` is in "
              + theirs.get().unit()
              + " where `"
              + name.name()
              + "` is in "
              + ours,
          "state both in one unit");
    }
  }

  private void neverHolds(Text cell, Symbol input, PreparedTest test) {
    ValueSet possible = allowed.getOrDefault(input, ValueSet.all(input.type()));
    boolean never =
        test.forNothing() != Truth.TRUE
            && test.region().filter(region -> !region.intersects(possible)).isPresent();
    if (!never) {
      return;
    }
    ValueSet region = test.region().orElseThrow();
    if (region.isEmpty()) {
      issues.warning(
          "W173",
          cell.at(),
          "`" + cell.text() + "` can never hold: no value lies between its two ends",
          "write the smaller value first, and check the constants that it names");
      return;
    }
    // What a name stands for is said, since its cell may be far away.
    String means = test.references().isEmpty() ? "" : ", which is `" + region.plain() + "`,";
    issues.warning(
        "W173",
        cell.at(),
        "`"
            + cell.text()
            + "`"
            + means
            + " can never hold: `"
            + input.name()
            + "` is "
            + possible.plain(),
        "check the number, and the allowed values in the sheet Fields");
  }
}
