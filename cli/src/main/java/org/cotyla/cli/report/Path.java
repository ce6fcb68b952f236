package org.cotyla.cli.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cotyla.cli.text.KnownValues;
import org.cotyla.cli.text.Words;
import org.cotyla.evaluate.Contribution;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Datum;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;

/**
 * How the findings lead to one option: the rows that speak for, against or bar it, the decisions
 * that those rows read, and so on down to the findings. Only rows that count are followed.
 */
final class Path {

  /** What a step is. */
  enum Kind {
    FINDING,
    DECISION,
    VOTES,
    OPTION
  }

  /**
   * One step.
   *
   * @param name what people read
   * @param value what it came to
   * @param rows the rows that made it so
   * @param from the steps that it comes from
   */
  record Node(Kind kind, String name, String value, List<Row> rows, Set<Node> from) {
    @Override
    public int hashCode() {
      return System.identityHashCode(this);
    }

    @Override
    public boolean equals(Object other) {
      return this == other;
    }
  }

  private final Recommendation advice;
  private final KnownValues known;
  private final Map<Symbol, DecisionResult> givers = new HashMap<>();
  private final Map<Symbol, Calculation> calculations = new HashMap<>();
  private final Map<Symbol, Set<Node>> ofCalculations = new HashMap<>();
  private final Map<String, Node> nodes = new LinkedHashMap<>();

  private Path(Sheet sheet) {
    this.advice = sheet.advice();
    this.known = sheet.known();
    for (DecisionResult result : advice.decisions()) {
      result.table().gives().forEach(symbol -> givers.put(symbol, result));
    }
    for (Calculation calculation : advice.protocol().calculations()) {
      calculations.put(calculation.symbol(), calculation);
    }
  }

  /** Every step to the option, findings first. */
  static List<Node> to(Sheet sheet, RankingResult ranking, RankedOption option) {
    Path path = new Path(sheet);
    Set<Node> votes = new LinkedHashSet<>();
    Map<DecisionResult, List<Contribution>> byTable = new LinkedHashMap<>();
    for (DecisionResult result : path.advice.decisions()) {
      List<Contribution> rows =
          option.contributions().stream()
              .filter(row -> row.firing().table() == result.table())
              .toList();
      if (!rows.isEmpty()) {
        byTable.put(result, rows);
      }
    }
    byTable.forEach((result, rows) -> votes.add(path.votes(result, rows)));
    Node last =
        new Node(
            Kind.OPTION,
            "first " + ranking.ranking().name(),
            option.name() + ", " + Reasons.inPoints(option.points()),
            List.of(),
            votes);
    List<Node> all = new ArrayList<>(path.nodes.values());
    all.addAll(votes);
    all.add(last);
    return all;
  }

  private Node votes(DecisionResult result, List<Contribution> contributions) {
    Set<Node> from = new LinkedHashSet<>();
    contributions.forEach(row -> from.addAll(sources(row.firing())));
    String sum =
        contributions.stream()
            .map(Path::inShort)
            .reduce((one, other) -> one + ", " + other)
            .orElse("");
    List<Row> rows = contributions.stream().map(row -> row.firing().row()).toList();
    return new Node(Kind.VOTES, result.table().name(), sum, rows, from);
  }

  private static String inShort(Contribution row) {
    String points = row.points().abs().stripTrailingZeros().toPlainString();
    String sign = row.points().signum() > 0 ? "+" : "−";
    String effect = row.points().signum() == 0 ? row.effect().word() : sign + points;
    return row.isCertain() ? effect : "perhaps " + effect;
  }

  private Set<Node> sources(Firing firing) {
    Set<Node> found = new LinkedHashSet<>();
    for (int i = 0; i < firing.row().tests().size(); i++) {
      Row.Test test = firing.row().tests().get(i);
      if (!test.prepared().isAnything()) {
        found.addAll(nodes(firing.table().inputs().get(i).symbol()));
        inOrder(test.prepared().test().references()).forEach(name -> found.addAll(nodes(name)));
      }
    }
    return found;
  }

  /** Sets of names have no order of their own; the protocol's makes the same picture each time. */
  private static List<Symbol> inOrder(Set<Symbol> names) {
    return names.stream().sorted(Comparator.comparingInt(Symbol::index)).toList();
  }

  /** The step that gives the name; of a formula those of its names, of a constant none. */
  private Set<Node> nodes(Symbol symbol) {
    Calculation calculation = calculations.get(symbol);
    if (calculation != null) {
      Set<Node> earlier = ofCalculations.get(symbol);
      if (earlier != null) {
        return earlier;
      }
      Set<Node> found = new LinkedHashSet<>();
      inOrder(calculation.needs()).forEach(name -> found.addAll(nodes(name)));
      ofCalculations.put(symbol, found);
      return found;
    }
    DecisionResult giver = givers.get(symbol);
    if (giver != null) {
      return Set.of(decision(giver));
    }
    return finding(symbol).map(Set::of).orElse(Set.of());
  }

  private Node decision(DecisionResult result) {
    String key = "decision " + result.table().name();
    Node earlier = nodes.get(key);
    if (earlier != null) {
      return earlier;
    }
    Set<Node> from = new LinkedHashSet<>();
    List<Row> rows = new ArrayList<>();
    for (Firing firing : result.counting()) {
      from.addAll(sources(firing));
      rows.add(firing.row());
    }
    result.table().otherwise().filter(row -> result.byDefault()).ifPresent(rows::add);
    List<String> values = new ArrayList<>();
    result
        .table()
        .outputs()
        .forEach(
            output -> {
              PossibleValues value = result.outputs().get(output.symbol().name());
              if (value != null) {
                values.add(value(output.symbol(), value));
              }
            });
    Node node =
        new Node(Kind.DECISION, result.table().name(), String.join("; ", values), rows, from);
    nodes.put(key, node);
    return node;
  }

  private String value(Symbol symbol, PossibleValues value) {
    boolean many = value.values().isFinite() && value.values().values().size() > 3;
    return many ? "open: one of " + value.values().values().size() : known.inWords(symbol, value);
  }

  private Optional<Node> finding(Symbol symbol) {
    return advice.findings().data().stream()
        .filter(datum -> datum.field().symbol().equals(symbol))
        .filter(datum -> datum.knowledge() != Datum.Knowledge.NOT_YET)
        .findFirst()
        .map(
            datum ->
                nodes.computeIfAbsent(
                    "finding " + symbol.name(),
                    key ->
                        new Node(
                            Kind.FINDING,
                            symbol.name(),
                            known.inWords(symbol, datum.value()),
                            List.of(),
                            Set.of())));
  }

  /** The ids of a step's rows, in short. */
  static String rows(Node node, int most) {
    return Words.some(node.rows().stream().map(Row::id).toList(), most);
  }
}
