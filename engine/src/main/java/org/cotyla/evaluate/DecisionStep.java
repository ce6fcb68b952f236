package org.cotyla.evaluate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.expression.Scope;
import org.cotyla.expression.Symbol;
import org.cotyla.firing.FiredRow;
import org.cotyla.firing.Session;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;

/**
 * One decision of an evaluation: fires its rows, lets the hit policy choose, and gives the outputs.
 */
final class DecisionStep {

  private final DecisionTable table;
  private final int place;

  DecisionStep(DecisionTable table, int place) {
    this.table = table;
    this.place = place;
  }

  DecisionResult run(Session session, Scope values) {
    List<PossibleValues> seen =
        table.inputs().stream().map(input -> values.valueOf(input.symbol())).toList();
    List<Firing> fired = new ArrayList<>();
    for (FiredRow row : session.fire(place, values)) {
      fired.add(firing(row, seen, values));
    }
    Selection selection = HitPolicyRules.select(table, fired, values);
    return new DecisionResult(
        table,
        outputs(selection, values),
        selection.firings(),
        selection.noneCertain(),
        selection.nonePossible(),
        selection.nonePossible() ? byDefault(values) : List.of(),
        selection.faults());
  }

  private List<PossibleValues> byDefault(Scope values) {
    return table.otherwise().map(row -> results(row, values)).orElse(List.of());
  }

  private Firing firing(FiredRow fired, List<PossibleValues> seen, Scope values) {
    boolean certain = !fired.truths().contains(Truth.OPEN);
    return new Firing(
        table,
        fired.row(),
        certain,
        Standing.DECIDES,
        seen,
        fired.truths(),
        results(fired.row(), values));
  }

  private static List<PossibleValues> results(Row row, Scope values) {
    List<PossibleValues> results = new ArrayList<>(row.results().size());
    for (Row.Result result : row.results()) {
      results.add(result.expression().evaluate(values));
    }
    return results;
  }

  private Map<String, PossibleValues> outputs(Selection selection, Scope values) {
    Map<String, PossibleValues> outputs = new LinkedHashMap<>();
    if (table.hitPolicy().isList()) {
      return outputs;
    }
    List<Firing> counting = selection.firings().stream().filter(Firing::counts).toList();
    for (int i = 0; i < table.outputs().size(); i++) {
      Symbol symbol = table.outputs().get(i).symbol();
      PossibleValues result = new PossibleValues(ValueSet.none(symbol.type()), false);
      if (!counting.isEmpty()) {
        result = result.union(matched(counting, i, symbol));
      }
      if (selection.nonePossible() || counting.isEmpty()) {
        result = result.union(unmatched(i, symbol, values));
      }
      outputs.put(symbol.name(), result);
    }
    return outputs;
  }

  private PossibleValues matched(List<Firing> counting, int output, Symbol symbol) {
    if (table.hitPolicy().isAggregate()) {
      return Aggregation.of(table.hitPolicy(), counting, output, symbol.type());
    }
    PossibleValues union = counting.get(0).results().get(output);
    for (Firing firing : counting) {
      union = union.union(firing.results().get(output));
    }
    return union;
  }

  private PossibleValues unmatched(int output, Symbol symbol, Scope values) {
    return table
        .otherwise()
        .map(row -> row.results().get(output).expression().evaluate(values))
        .orElseGet(
            () ->
                table.hitPolicy() == HitPolicy.COUNT
                    ? PossibleValues.of(Value.of(0))
                    : PossibleValues.nothing(symbol.type()));
  }
}
