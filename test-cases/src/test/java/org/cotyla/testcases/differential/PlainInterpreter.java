package org.cotyla.testcases.differential;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BinaryOperator;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Effect;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Row;

/**
 * Runs a protocol on complete data, plainly: every name is worked out when it is asked for, rows
 * are tried one by one. Shares nothing with the engine but the protocol's tables.
 *
 * <p>Where a table contradicts itself (two rows under U, or different results under A), each of its
 * rows may be the result; {@link #run} then gives one world for each way.
 */
final class PlainInterpreter {

  /**
   * What one decision comes to: the rows that match, those that count in order, the outputs, and
   * what the rows that count give, row by row.
   */
  record Decided(
      List<Row> matching,
      List<Row> counting,
      Map<String, Object> outputs,
      List<Object> listed,
      boolean isFault) {}

  /** What a ranking comes to, options from the first to the last. */
  record Ranked(List<String> order, Map<String, BigDecimal> points, List<String> out) {
    Object first() {
      return order.size() == out.size() ? null : order.get(0);
    }
  }

  /** Everything that was worked out. */
  record World(
      Map<String, Object> calculations,
      Map<String, Decided> decisions,
      Map<String, Ranked> rankings) {}

  private final Protocol protocol;
  private final Map<Symbol, Object> known = new HashMap<>();
  private final PlainFormulas formulas = new PlainFormulas(this::value);
  private final World world =
      new World(new LinkedHashMap<>(), new LinkedHashMap<>(), new LinkedHashMap<>());
  private final List<Integer> chosen;
  private final List<Integer> ways = new ArrayList<>();

  private PlainInterpreter(Protocol protocol, Map<Symbol, Object> given, List<Integer> chosen) {
    this.protocol = protocol;
    this.known.putAll(given);
    this.chosen = chosen;
  }

  /** The one world of the data, or several when a table contradicts itself. */
  static List<World> run(Protocol protocol, Map<Symbol, Object> given) {
    List<World> worlds = new ArrayList<>();
    List<Integer> chosen = new ArrayList<>();
    do {
      PlainInterpreter interpreter = new PlainInterpreter(protocol, given, chosen);
      worlds.add(interpreter.all());
      while (chosen.size() < interpreter.ways.size()) {
        chosen.add(0);
      }
      int last = chosen.size() - 1;
      while (last >= 0 && chosen.get(last) + 1 == interpreter.ways.get(last)) {
        chosen.remove(last--);
      }
      if (last >= 0) {
        chosen.set(last, chosen.get(last) + 1);
      }
    } while (!chosen.isEmpty());
    return worlds;
  }

  private World all() {
    protocol.calculations().forEach(c -> world.calculations.put(c.name(), value(c.symbol())));
    protocol.decisions().forEach(this::decided);
    protocol.rankings().forEach(this::ranked);
    return world;
  }

  private Object value(Symbol symbol) {
    if (known.containsKey(symbol)) {
      return known.get(symbol);
    }
    Object value = workOut(symbol);
    known.put(symbol, value);
    return value;
  }

  private Object workOut(Symbol symbol) {
    for (Calculation calculation : protocol.calculations()) {
      if (calculation.symbol().equals(symbol)) {
        return formulas.formula(calculation.expression());
      }
    }
    for (DecisionTable table : protocol.decisions()) {
      for (DecisionTable.Output output : table.outputs()) {
        if (output.symbol().equals(symbol)) {
          return decided(table).outputs.get(symbol.name());
        }
      }
    }
    for (Ranking ranking : protocol.rankings()) {
      if (ranking.first().equals(symbol)) {
        return ranked(ranking).first();
      }
    }
    throw new IllegalStateException("no one gives " + symbol.name());
  }

  private Decided decided(DecisionTable table) {
    Decided before = world.decisions.get(table.name());
    if (before != null) {
      return before;
    }
    List<Row> matching = table.rows().stream().filter(row -> matches(table, row)).toList();
    List<Row> counting = matching;
    boolean fault = false;
    HitPolicy policy = table.hitPolicy();
    if (policy == HitPolicy.PRIORITY || policy == HitPolicy.OUTPUT_ORDER) {
      counting =
          matching.stream().sorted(Comparator.comparing(row -> priority(table, row))).toList();
    }
    if (policy.isSingleHit() && matching.size() > 1) {
      boolean agree = matching.stream().allMatch(row -> sameResult(row, matching.get(0)));
      fault = policy == HitPolicy.UNIQUE || (policy == HitPolicy.ANY && !agree);
      boolean all = policy == HitPolicy.ANY && agree;
      counting = all ? matching : List.of(counting.get(fault ? choice(matching.size()) : 0));
    }
    List<Object> listed = new ArrayList<>();
    counting.forEach(
        row -> {
          for (int i = 0; i < row.results().size(); i++) {
            listed.add(Exactness.text(result(row, i)));
          }
        });
    Decided decided = new Decided(matching, counting, outputs(table, counting), listed, fault);
    world.decisions.put(table.name(), decided);
    return decided;
  }

  private int choice(int of) {
    ways.add(of);
    return ways.size() <= chosen.size() ? chosen.get(ways.size() - 1) : 0;
  }

  private boolean matches(DecisionTable table, Row row) {
    for (int i = 0; i < row.tests().size(); i++) {
      Object input = value(table.inputs().get(i).symbol());
      if (!Boolean.TRUE.equals(formulas.test(row.tests().get(i).prepared().test(), input))) {
        return false;
      }
    }
    return true;
  }

  /** Sorts as text: two digits for each output that has an order, unknown ones last. */
  private String priority(DecisionTable table, Row row) {
    StringBuilder key = new StringBuilder();
    for (int i = 0; i < table.outputs().size(); i++) {
      List<String> choices = table.outputs().get(i).symbol().choices();
      int place = choices.indexOf(String.valueOf(result(row, i)));
      key.append(choices.isEmpty() ? "" : String.format("%02d", place < 0 ? 99 : place));
    }
    return key.toString();
  }

  private Object result(Row row, int output) {
    return formulas.formula(row.results().get(output).expression());
  }

  private boolean sameResult(Row a, Row b) {
    for (int i = 0; i < a.results().size(); i++) {
      if (!PlainFormulas.same(result(a, i), result(b, i))) {
        return false;
      }
    }
    return a.vote().equals(b.vote());
  }

  private Map<String, Object> outputs(DecisionTable table, List<Row> counting) {
    Map<String, Object> outputs = new LinkedHashMap<>();
    for (int i = 0; i < table.outputs().size() && !table.hitPolicy().isList(); i++) {
      int output = i;
      List<Object> results = new ArrayList<>();
      counting.forEach(row -> results.add(result(row, output)));
      boolean byDefault = counting.isEmpty() && table.otherwise().isPresent();
      outputs.put(
          table.outputs().get(i).symbol().name(),
          byDefault
              ? result(table.otherwise().get(), output)
              : aggregate(table.hitPolicy(), results));
    }
    return outputs;
  }

  private static Object aggregate(HitPolicy policy, List<Object> results) {
    if (policy == HitPolicy.COUNT) {
      return BigDecimal.valueOf(results.size());
    }
    if (results.isEmpty() || results.contains(null)) {
      return null;
    }
    BinaryOperator<Object> join =
        switch (policy) {
          case SUM -> (a, b) -> ((BigDecimal) a).add((BigDecimal) b, MathContext.DECIMAL128);
          case MINIMUM -> (a, b) -> ((BigDecimal) a).min((BigDecimal) b);
          case MAXIMUM -> (a, b) -> ((BigDecimal) a).max((BigDecimal) b);
          default -> (a, b) -> a;
        };
    return results.stream().reduce(join).orElseThrow();
  }

  private Ranked ranked(Ranking ranking) {
    Map<String, BigDecimal> points = new LinkedHashMap<>();
    List<String> out = new ArrayList<>();
    ranking.options().forEach(option -> points.put(option.name(), BigDecimal.ZERO));
    for (DecisionTable voter : ranking.voters()) {
      List<Row> counting = decided(voter).counting;
      // Rows that agree under a single-hit policy are one result.
      for (Row row :
          voter.hitPolicy().isSingleHit() ? counting.stream().limit(1).toList() : counting) {
        row.vote()
            .ifPresent(
                vote -> {
                  boolean against = vote.effect() == Effect.OPPOSE;
                  points.merge(
                      vote.option(),
                      against ? vote.points().negate() : vote.points(),
                      BigDecimal::add);
                  if (vote.effect() == Effect.RULE_OUT && !out.contains(vote.option())) {
                    out.add(vote.option());
                  }
                });
      }
    }
    List<String> order =
        ranking.options().stream()
            .map(Option::name)
            .sorted(
                Comparator.<String, Boolean>comparing(out::contains)
                    .thenComparing(
                        name -> out.contains(name) ? BigDecimal.ZERO : points.get(name).negate()))
            .toList();
    Ranked ranked = new Ranked(order, points, out);
    world.rankings.put(ranking.name(), ranked);
    return ranked;
  }
}
