package org.cotyla.compare;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cotyla.compare.Difference.Kind;
import org.cotyla.finite.Claim;
import org.cotyla.finite.Claim.Weighted;
import org.cotyla.name.Names;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Effect;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Vote;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/** One decision in two protocols, and everything in which its results can differ. */
final class TablePair {

  private static final int MOST_ENTRIES_IN_ORDER = 60;

  private final DecisionTable before;
  private final DecisionTable after;
  private final Side old;
  private final Side young;

  private TablePair(DecisionTable before, DecisionTable after, Side old, Side young) {
    this.before = before;
    this.after = after;
    this.old = old;
    this.young = young;
  }

  /** Everything in which they can differ; nothing when their results are of different kinds. */
  static Optional<List<Aspect>> aspects(
      DecisionTable before, DecisionTable after, Side old, Side young) {
    return new TablePair(before, after, old, young).aspects();
  }

  private Optional<List<Aspect>> aspects() {
    HitPolicy was = before.hitPolicy();
    HitPolicy is = after.hitPolicy();
    if (before.votes() || after.votes()) {
      boolean same = before.ranking().map(Names::key).equals(after.ranking().map(Names::key));
      return same ? Optional.of(guarded(votes())) : Optional.empty();
    }
    if (!outputs(before).equals(outputs(after))) {
      return Optional.empty();
    }
    if (was.isSingleHit() && is.isSingleHit()) {
      return Optional.of(guarded(List.of(results())));
    }
    if (was.isList() && is.isList()) {
      List<Aspect> entries = entries();
      boolean ordered = was != HitPolicy.COLLECT && was == is;
      if (ordered && was == HitPolicy.RULE_ORDER) {
        Optional<List<Aspect>> order = order();
        order.ifPresent(entries::addAll);
        return order.map(known -> entries);
      }
      return was == is && !ordered ? Optional.of(entries) : Optional.empty();
    }
    return was == is ? numbers() : Optional.empty();
  }

  private static List<String> outputs(DecisionTable table) {
    return table.outputs().stream()
        .map(output -> Names.key(output.symbol().name()) + " " + output.symbol().type())
        .toList();
  }

  /** Where rows contradict each other the result says nothing, but the contradiction counts. */
  private List<Aspect> guarded(List<Aspect> aspects) {
    Optional<Claim> was = Contradictions.of(before, old);
    Optional<Claim> is = Contradictions.of(after, young);
    if (was.isEmpty() && is.isEmpty()) {
      return aspects;
    }
    Claim never = new Claim.Any(List.of());
    Claim wasTorn = was.orElse(never);
    Claim isTorn = is.orElse(never);
    Claim sound = new Claim.All(List.of(new Claim.Not(wasTorn), new Claim.Not(isTorn)));
    List<Aspect> all = new ArrayList<>();
    aspects.forEach(aspect -> all.add(new GuardedAspect(aspect, sound)));
    all.add(new PresenceAspect("", wasTorn, isTorn, Kind.CONTRADICTION, Kind.NO_CONTRADICTION));
    all.addAll(leftOpen(new Claim.All(List.of(wasTorn, isTorn))));
    return all;
  }

  /** Where rows contradict each other in both, all that they give stays possible, and counts. */
  private List<Aspect> leftOpen(Claim torn) {
    Map<String, Claim> was = matching(before, old);
    Map<String, Claim> is = matching(after, young);
    Claim never = new Claim.Any(List.of());
    Set<String> all = new LinkedHashSet<>(was.keySet());
    all.addAll(is.keySet());
    List<Aspect> open = new ArrayList<>();
    for (String given : all) {
      Aspect there =
          new PresenceAspect(
              given,
              was.getOrDefault(given, never),
              is.getOrDefault(given, never),
              Kind.OTHER_CONTRADICTION,
              Kind.OTHER_CONTRADICTION);
      open.add(new GuardedAspect(there, torn));
    }
    return open;
  }

  /** When a row matches that gives this, for everything that any row gives. */
  private static Map<String, Claim> matching(DecisionTable table, Side side) {
    Map<String, List<Claim>> rows = new LinkedHashMap<>();
    for (Row row : table.rows()) {
      String given =
          row.vote().map(Vote::toString).orElseGet(() -> new Entry(table, row, side).words());
      rows.computeIfAbsent(given, same -> new ArrayList<>()).add(new Claim.Matches(table, row));
    }
    Map<String, Claim> given = new LinkedHashMap<>();
    rows.forEach(
        (words, claims) -> given.put(words, new Claim.Of(side.number(), new Claim.Any(claims))));
    return given;
  }

  private Aspect results() {
    return new TokenAspect("", tokens(before, old), tokens(after, young));
  }

  private static Map<String, Claim> tokens(DecisionTable table, Side side) {
    Map<String, List<Claim>> rows = new LinkedHashMap<>();
    for (Row row : rows(table)) {
      String token = new Entry(table, row, side).words();
      rows.computeIfAbsent(token, same -> new ArrayList<>()).add(new Claim.Counts(table, row));
    }
    if (table.otherwise().isEmpty()) {
      rows.computeIfAbsent(Entry.nothing(table), same -> new ArrayList<>())
          .add(new Claim.NoRow(table));
    }
    Map<String, Claim> tokens = new LinkedHashMap<>();
    rows.forEach(
        (token, claims) -> tokens.put(token, new Claim.Of(side.number(), new Claim.Any(claims))));
    return tokens;
  }

  private static List<Row> rows(DecisionTable table) {
    List<Row> rows = new ArrayList<>(table.rows());
    table.otherwise().ifPresent(rows::add);
    return rows;
  }

  private List<Aspect> entries() {
    Map<String, Claim> was = entries(before, old);
    Map<String, Claim> is = entries(after, young);
    Claim never = new Claim.Any(List.of());
    Set<String> all = new LinkedHashSet<>(was.keySet());
    all.addAll(is.keySet());
    List<Aspect> entries = new ArrayList<>();
    for (String entry : all) {
      entries.add(
          new PresenceAspect(
              entry,
              was.getOrDefault(entry, never),
              is.getOrDefault(entry, never),
              Kind.NEW_ENTRY,
              Kind.GONE_ENTRY));
    }
    return entries;
  }

  private static Map<String, Claim> entries(DecisionTable table, Side side) {
    Map<String, List<Claim>> rows = new LinkedHashMap<>();
    for (Row row : rows(table)) {
      String entry = new Entry(table, row, side).words();
      rows.computeIfAbsent(entry, same -> new ArrayList<>()).add(new Claim.Counts(table, row));
    }
    Map<String, Claim> entries = new LinkedHashMap<>();
    rows.forEach(
        (entry, claims) -> entries.put(entry, new Claim.Of(side.number(), new Claim.Any(claims))));
    return entries;
  }

  /** Pairs of entries that may come the other way round; nothing when there are too many. */
  private Optional<List<Aspect>> order() {
    ListOrder was = new ListOrder(before, old);
    ListOrder is = new ListOrder(after, young);
    List<String> common = was.entries().stream().filter(is.entries()::contains).toList();
    if (common.size() > MOST_ENTRIES_IN_ORDER) {
      return Optional.empty();
    }
    List<Aspect> order = new ArrayList<>();
    for (int i = 0; i < common.size(); i++) {
      for (int j = i + 1; j < common.size(); j++) {
        String one = common.get(i);
        String other = common.get(j);
        if (was.mayTurn(one, other) || is.mayTurn(one, other) || !is.startsBefore(one, other)) {
          Claim both = new Claim.All(List.of(was.both(one, other), is.both(one, other)));
          order.add(
              new OrderAspect(one, other, was.precedes(one, other), is.precedes(one, other), both));
        }
      }
    }
    return Optional.of(order);
  }

  private Optional<List<Aspect>> numbers() {
    List<Aspect> numbers = new ArrayList<>();
    for (int i = 0; i < after.outputs().size(); i++) {
      HitPolicy policy = after.hitPolicy();
      Optional<List<Value>> was = constants(before, old, i);
      Optional<List<Value>> is = constants(after, young, i);
      if (policy == HitPolicy.COUNT) {
        numbers.addAll(sums(i, ones(before), ones(after)));
      } else if (was.isEmpty() || is.isEmpty()) {
        return Optional.empty();
      } else if (policy == HitPolicy.SUM) {
        numbers.addAll(sums(i, was.get(), is.get()));
      } else {
        numbers.add(
            new TokenAspect(
                after.outputs().size() == 1 ? "" : after.outputs().get(i).symbol().name(),
                extremes(before, old, i, was.get()),
                extremes(after, young, i, is.get())));
      }
    }
    return Optional.of(numbers);
  }

  private static List<Value> ones(DecisionTable table) {
    return table.rows().stream().map(row -> (Value) Value.of(1)).toList();
  }

  /** What each row gives, when that is a number in every case; of a default row too. */
  private static Optional<List<Value>> constants(DecisionTable table, Side side, int output) {
    List<Value> values = new ArrayList<>();
    for (Row row : rows(table)) {
      Optional<Value> value =
          side.constants()
              .of(row.results().get(output).expression())
              .flatMap(PossibleValues::single)
              .filter(Value.NumberValue.class::isInstance);
      if (value.isEmpty()) {
        return Optional.empty();
      }
      values.add(value.get());
    }
    return Optional.of(values);
  }

  private List<Aspect> sums(int output, List<Value> was, List<Value> is) {
    String name = after.outputs().get(output).symbol().name();
    List<Aspect> sums = new ArrayList<>();
    sums.add(
        new SumAspect(
            name,
            young.unit(after.outputs().get(output).symbol()),
            weighted(before, old, was, output),
            weighted(after, young, is, output),
            Kind.SUM));
    boolean canBeNothing = after.hitPolicy() != HitPolicy.COUNT;
    if (canBeNothing) {
      sums.add(
          new PresenceAspect(
              name + " is nothing",
              nothing(before, old),
              nothing(after, young),
              Kind.NEW_ENTRY,
              Kind.GONE_ENTRY));
    }
    return sums;
  }

  private static Claim nothing(DecisionTable table, Side side) {
    return table.otherwise().isPresent()
        ? new Claim.Any(List.of())
        : new Claim.Of(side.number(), new Claim.NoRow(table));
  }

  private static List<Weighted> weighted(
      DecisionTable table, Side side, List<Value> values, int output) {
    List<Weighted> weighted = new ArrayList<>();
    for (int i = 0; i < table.rows().size(); i++) {
      Claim counts = new Claim.Of(side.number(), new Claim.Counts(table, table.rows().get(i)));
      weighted.add(new Weighted(counts, ((Value.NumberValue) values.get(i)).number()));
    }
    table
        .otherwise()
        .flatMap(row -> side.constants().of(row.results().get(output).expression()))
        .flatMap(PossibleValues::single)
        .filter(Value.NumberValue.class::isInstance)
        .map(Value.NumberValue.class::cast)
        .ifPresent(
            value ->
                weighted.add(
                    new Weighted(
                        new Claim.Of(side.number(), new Claim.NoRow(table)), value.number())));
    return weighted;
  }

  private static Map<String, Claim> extremes(
      DecisionTable table, Side side, int output, List<Value> values) {
    org.cotyla.expression.Symbol symbol = table.outputs().get(output).symbol();
    String unit = side.unit(symbol);
    Map<String, Claim> tokens = new LinkedHashMap<>();
    for (Value value : values) {
      tokens.putIfAbsent(
          value.plain() + (unit.isEmpty() ? "" : " " + unit),
          new Claim.Of(side.number(), new Claim.Is(symbol, PossibleValues.of(value))));
    }
    tokens.put(
        "nothing",
        new Claim.Of(side.number(), new Claim.Is(symbol, PossibleValues.nothing(symbol.type()))));
    return tokens;
  }

  private List<Aspect> votes() {
    Set<String> options = new LinkedHashSet<>();
    Votes was = new Votes(before, old);
    Votes is = new Votes(after, young);
    options.addAll(was.options());
    options.addAll(is.options());
    List<Aspect> votes = new ArrayList<>();
    for (String option : options) {
      votes.add(
          new SumAspect(option, "points", was.points(option), is.points(option), Kind.POINTS));
      votes.add(
          new PresenceAspect(
              option,
              was.ruledOut(option),
              is.ruledOut(option),
              Kind.RULED_OUT,
              Kind.NO_LONGER_RULED_OUT));
    }
    return votes;
  }

  /** The votes of one table. */
  static final class Votes {

    private final Map<Vote, List<Claim>> votes = new LinkedHashMap<>();
    private final boolean once;
    private final int side;

    Votes(DecisionTable table, Side side) {
      this.once = table.hitPolicy() == HitPolicy.ANY;
      this.side = side.number();
      for (Row row : rows(table)) {
        row.vote()
            .ifPresent(
                vote ->
                    votes
                        .computeIfAbsent(vote, same -> new ArrayList<>())
                        .add(new Claim.Counts(table, row)));
      }
    }

    Set<String> options() {
      Set<String> options = new LinkedHashSet<>();
      votes.keySet().forEach(vote -> options.add(vote.option()));
      return options;
    }

    List<Weighted> points(String option) {
      List<Weighted> points = new ArrayList<>();
      votes.forEach(
          (vote, rows) -> {
            if (vote.option().equals(option) && vote.effect() != Effect.RULE_OUT) {
              boolean against = vote.effect() == Effect.OPPOSE;
              BigDecimal weight = against ? vote.points().negate() : vote.points();
              List<Claim> each = once ? List.of(new Claim.Any(rows)) : rows;
              each.forEach(claim -> points.add(new Weighted(new Claim.Of(side, claim), weight)));
            }
          });
      return points;
    }

    Claim ruledOut(String option) {
      List<Claim> bars = new ArrayList<>();
      votes.forEach(
          (vote, rows) -> {
            if (vote.option().equals(option) && vote.effect() == Effect.RULE_OUT) {
              bars.addAll(rows);
            }
          });
      return new Claim.Of(side, new Claim.Any(bars));
    }
  }
}
