package org.cotyla.finite;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cotyla.evaluate.Aggregation;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.Priorities;
import org.cotyla.evaluate.Standing;
import org.cotyla.expression.Expression;
import org.cotyla.expression.Scope;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Alternatives.Leaf;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/** Results that hang on which rows of a table match and on the formulas in them, together. */
final class Matching {

  private final ProtocolEncoding protocol;
  private final DecisionTable table;
  private final Map<Row, Symbol> asked = new LinkedHashMap<>();
  private final Set<Symbol> reads = new HashSet<>();

  /**
   * @param matches the literal for whether a row matches
   */
  Matching(ProtocolEncoding protocol, DecisionTable table, ToIntFunction<Row> matches) {
    this.protocol = protocol;
    this.table = table;
    for (Row row : table.rows()) {
      int literal = matches.applyAsInt(row);
      if (literal != protocol.circuit().no()) {
        asked.put(row, protocol.asked(row, literal));
      }
    }
    reads.addAll(asked.values());
  }

  /** The aggregate of one output over the rows that match, when the literal holds. */
  Dependent aggregated(int column, Alternatives result, int when) {
    Symbol symbol = table.outputs().get(column).symbol();
    asked.keySet().forEach(row -> reads.addAll(expression(row, column).references()));
    return new Dependent(
        reads,
        scope ->
            Aggregation.of(
                table.hitPolicy(),
                firings(scope, row -> List.of(expression(row, column).evaluate(scope))),
                0,
                symbol.type()),
        result,
        when,
        Optional.of(symbol));
  }

  private static Expression expression(Row row, int column) {
    return row.results().get(column).expression();
  }

  /** Which row is taken by the priority of what the rows give, when the literal holds. */
  Dependent ofPriority(int when, int none, ToIntFunction<Row> taken) {
    List<Leaf> leaves = new ArrayList<>();
    for (Row row : asked.keySet()) {
      ordering(row).forEach(expression -> reads.addAll(expression.references()));
      leaves.add(new Leaf(PossibleValues.of(place(row)), taken.applyAsInt(row)));
    }
    leaves.add(new Leaf(PossibleValues.nothing(ValueType.NUMBER), none));
    return new Dependent(
        reads,
        scope -> {
          Function<Row, List<PossibleValues>> results =
              row -> ordering(row).map(expression -> expression.evaluate(scope)).toList();
          return places(Priorities.contenders(table, firings(scope, results)));
        },
        Alternatives.of(protocol.circuit(), leaves),
        when,
        Optional.empty());
  }

  /** What the row gives in each output, but nothing where the output orders no rows. */
  private Stream<Expression> ordering(Row row) {
    return IntStream.range(0, table.outputs().size())
        .mapToObj(
            column -> {
              Symbol symbol = table.outputs().get(column).symbol();
              return symbol.isChoice()
                  ? expression(row, column)
                  : new Expression.Nothing(symbol.type());
            });
  }

  private static Value place(Row row) {
    return Value.of(row.position());
  }

  private static PossibleValues places(List<Firing> firings) {
    return PossibleValues.of(
        ValueSet.of(
            ValueType.NUMBER, firings.stream().map(firing -> place(firing.row())).toList()));
  }

  private List<Firing> firings(Scope scope, Function<Row, List<PossibleValues>> results) {
    List<Firing> firings = new ArrayList<>();
    asked.forEach(
        (row, symbol) -> {
          PossibleValues matches = scope.valueOf(symbol);
          if (matches.values().contains(Value.of(true))) {
            firings.add(firing(row, matches.isCertain(), results.apply(row)));
          }
        });
    return firings;
  }

  private Firing firing(Row row, boolean certain, List<PossibleValues> results) {
    return new Firing(table, row, certain, Standing.DECIDES, List.of(), List.of(), results);
  }
}
