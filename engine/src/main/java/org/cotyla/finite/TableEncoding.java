package org.cotyla.finite;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cotyla.expression.Expression;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Alternatives.Leaf;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/**
 * One decision table as a solver sees it: which rows match, which of them count by the hit policy,
 * and the classes of each output.
 *
 * <p>Where rows contradict each other any of them may count, as in an evaluation.
 */
final class TableEncoding {

  /** Sums are counted in whole multiples of the last decimal, which have to fit. */
  private static final int DECIMALS_AT_MOST = 6;

  private static final int DIGITS_AT_MOST = 12;

  private final ProtocolEncoding protocol;
  private final Circuit circuit;
  private final DecisionTable table;
  private final List<Integer> matches = new ArrayList<>();
  private final Map<Row, Integer> counts = new IdentityHashMap<>();
  private final int none;
  private final Map<Symbol, Alternatives> outputs = new HashMap<>();

  TableEncoding(ProtocolEncoding protocol, DecisionTable table) {
    this.protocol = protocol;
    this.circuit = protocol.circuit();
    this.table = table;
    table.rows().forEach(row -> matches.add(protocol.matches(table, row)));
    this.none = circuit.and(matches.stream().map(literal -> -literal).toList());
    decide();
  }

  /** Holds when no row matches. */
  int none() {
    return none;
  }

  int matches(Row row) {
    return row.position() < matches.size() && table.rows().get(row.position()) == row
        ? matches.get(row.position())
        : none;
  }

  /** Holds when the row is part of the result; under A all that match are, since they agree. */
  int counts(Row row) {
    return table.hitPolicy() == HitPolicy.ANY ? matches(row) : speaks(row);
  }

  /** Holds when the row's result is the one that is taken; of rows that agree one is. */
  int speaks(Row row) {
    return counts.getOrDefault(row, none);
  }

  private void decide() {
    HitPolicy policy = table.hitPolicy();
    if (policy == HitPolicy.FIRST) {
      inOrder(table.rows(), counts);
    } else if (policy == HitPolicy.PRIORITY && hasConstantResults()) {
      inOrder(byPriority(), counts);
    } else if (policy.isSingleHit()) {
      oneOfThem();
    } else {
      table.rows().forEach(row -> counts.put(row, matches(row)));
    }
  }

  /** The first row in this order that matches. */
  private void inOrder(List<Row> rows, Map<Row, Integer> chosen) {
    int before = circuit.no();
    for (Row row : rows) {
      chosen.put(row, circuit.and(matches(row), -before));
      before = circuit.or(before, matches(row));
    }
  }

  private void oneOfThem() {
    List<Row> open = table.rows().stream().filter(row -> matches(row) != circuit.no()).toList();
    if (open.size() == 1) {
      counts.put(open.get(0), matches(open.get(0)));
    } else if (!open.isEmpty()) {
      List<Integer> one = new ArrayList<>(List.of(none));
      for (Row row : open) {
        int counting = circuit.unknown();
        circuit.demand(-counting, matches(row));
        counts.put(row, counting);
        one.add(counting);
      }
      circuit.demandExactlyOne(one);
    }
    table.rows().forEach(row -> counts.putIfAbsent(row, circuit.no()));
  }

  private boolean hasConstantResults() {
    return table.rows().stream()
        .flatMap(row -> row.results().stream())
        .allMatch(result -> protocol.constant(result.expression()).isPresent());
  }

  private List<Row> byPriority() {
    Comparator<Row> order = Comparator.comparingInt(row -> 0);
    for (int i = 0; i < table.outputs().size(); i++) {
      List<String> priorities = table.outputs().get(i).symbol().choices();
      int output = i;
      order = order.thenComparingInt(row -> place(row, output, priorities));
    }
    return table.rows().stream().sorted(order).toList();
  }

  private int place(Row row, int output, List<String> priorities) {
    int place =
        protocol
            .constant(row.results().get(output).expression())
            .flatMap(PossibleValues::single)
            .map(value -> priorities.indexOf(value.plain()))
            .orElse(-1);
    return place < 0 ? priorities.size() : place;
  }

  Alternatives output(Symbol symbol) {
    Alternatives known = outputs.get(symbol);
    if (known == null) {
      int column =
          table.outputs().stream().map(DecisionTable.Output::symbol).toList().indexOf(symbol);
      known = encode(column, symbol);
      outputs.put(symbol, known);
    }
    return known;
  }

  private Alternatives encode(int column, Symbol symbol) {
    HitPolicy policy = table.hitPolicy();
    if (policy.isSingleHit()) {
      return choice(column, symbol, counts);
    }
    if (policy == HitPolicy.COUNT) {
      return sum(column, symbol, row -> Optional.of(Value.of(1)));
    }
    boolean constant =
        table.rows().stream().allMatch(row -> isShort(row, column) || speaks(row) == circuit.no());
    if (policy == HitPolicy.SUM && constant) {
      return sum(column, symbol, row -> number(row, column));
    }
    if ((policy == HitPolicy.MINIMUM || policy == HitPolicy.MAXIMUM) && constant) {
      Comparator<Row> byValue =
          Comparator.comparing(row -> number(row, column).orElse(Value.of(0)));
      Map<Row, Integer> extreme = new IdentityHashMap<>();
      inOrder(
          table.rows().stream()
              .filter(row -> speaks(row) != circuit.no())
              .sorted(policy == HitPolicy.MINIMUM ? byValue : byValue.reversed())
              .toList(),
          extreme);
      // What is not in the map would be taken for the default row.
      table.rows().forEach(row -> extreme.putIfAbsent(row, circuit.no()));
      return choice(column, symbol, extreme);
    }
    return Alternatives.free(circuit, protocol.hull().of(symbol));
  }

  /** Whether the result is a constant, and not one of many digits, such as a third. */
  private boolean isShort(Row row, int column) {
    return number(row, column)
        .filter(
            value ->
                !(value instanceof Value.NumberValue number)
                    || (number.number().stripTrailingZeros().scale() <= DECIMALS_AT_MOST
                        && number.number().precision() <= DIGITS_AT_MOST))
        .isPresent();
  }

  private Optional<Value> number(Row row, int column) {
    return protocol
        .constant(row.results().get(column).expression())
        .flatMap(PossibleValues::single);
  }

  /** What the one row gives that counts, or the default row, or nothing. */
  private Alternatives choice(int column, Symbol symbol, Map<Row, Integer> chosen) {
    Map<PossibleValues, List<Integer>> byValue = new LinkedHashMap<>();
    List<Row> formulas = new ArrayList<>();
    Stream.concat(table.rows().stream(), table.otherwise().stream())
        .filter(row -> chosen.getOrDefault(row, none) != circuit.no())
        .forEach(
            row -> {
              Expression expression = row.results().get(column).expression();
              Optional<PossibleValues> constant = protocol.constant(expression);
              if (constant.isPresent()) {
                byValue
                    .computeIfAbsent(constant.get(), value -> new ArrayList<>())
                    .add(chosen.getOrDefault(row, none));
              } else {
                formulas.add(row);
              }
            });
    if (table.otherwise().isEmpty()) {
      byValue
          .computeIfAbsent(PossibleValues.nothing(symbol.type()), value -> new ArrayList<>())
          .add(none);
    }
    return formulas.isEmpty() ? fixed(byValue) : open(byValue, formulas, column, symbol, chosen);
  }

  private Alternatives fixed(Map<PossibleValues, List<Integer>> byValue) {
    List<Leaf> leaves = new ArrayList<>();
    byValue.forEach(
        (value, literals) -> {
          int literal = circuit.or(literals);
          if (literal != circuit.no()) {
            leaves.add(new Leaf(value, literal));
          }
        });
    return Alternatives.of(circuit, leaves);
  }

  private Alternatives open(
      Map<PossibleValues, List<Integer>> byValue,
      List<Row> formulas,
      int column,
      Symbol symbol,
      Map<Row, Integer> chosen) {
    PossibleValues all = protocol.hull().of(symbol);
    for (PossibleValues value : byValue.keySet()) {
      all = all.union(value);
    }
    Alternatives result = Alternatives.free(circuit, all);
    byValue.forEach(
        (value, literals) -> {
          int is = result.within(value.values(), value.orNothing());
          literals.forEach(literal -> circuit.demand(-literal, is));
        });
    for (Row row : formulas) {
      protocol.worked(
          row.results().get(column).expression(), result, chosen.getOrDefault(row, none), symbol);
    }
    return result;
  }

  /** The sum of constants of the rows that match; a default row gives the value of none. */
  private Alternatives sum(
      int column, Symbol symbol, java.util.function.Function<Row, Optional<Value>> weight) {
    WeightedSum sum = new WeightedSum(circuit);
    for (Row row : table.rows()) {
      if (speaks(row) != circuit.no()) {
        weight
            .apply(row)
            .filter(Value.NumberValue.class::isInstance)
            .map(Value.NumberValue.class::cast)
            .ifPresent(number -> sum.add(speaks(row), number.number()));
      }
    }
    List<Leaf> leaves = new ArrayList<>();
    if (none != circuit.yes()) {
      leaves.add(new Leaf(PossibleValues.of(sum.range()), -none));
    }
    if (none != circuit.no()) {
      PossibleValues otherwise =
          table
              .otherwise()
              .map(
                  row ->
                      protocol
                          .constant(row.results().get(column).expression())
                          .orElse(protocol.hull().of(symbol)))
              .orElse(
                  table.hitPolicy() == HitPolicy.COUNT
                      ? PossibleValues.of(Value.of(0))
                      : PossibleValues.nothing(symbol.type()));
      leaves.add(new Leaf(otherwise, none));
    }
    return Alternatives.of(circuit, leaves, Optional.of(sum));
  }
}
