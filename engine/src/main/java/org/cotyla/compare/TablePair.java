package org.cotyla.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cotyla.compare.Difference.Kind;
import org.cotyla.finite.Claim;
import org.cotyla.name.Names;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Vote;

/** One decision in two protocols, and everything in which its results can differ. */
final class TablePair {

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

  /** Everything in which they can differ, or why they cannot be compared. */
  static Aspects aspects(DecisionTable before, DecisionTable after, Side old, Side young) {
    return new TablePair(before, after, old, young).aspects();
  }

  private Aspects aspects() {
    HitPolicy was = before.hitPolicy();
    HitPolicy is = after.hitPolicy();
    if (before.votes() || after.votes()) {
      return before.ranking().map(Names::key).equals(after.ranking().map(Names::key))
          ? guarded(VoteAspects.between(List.of(before), List.of(after), old, young))
          : Aspects.refused("the two do not vote in the same ranking");
    }
    if (!outputs(before).equals(outputs(after))) {
      return Aspects.refused("the two give results of different kinds");
    }
    if (was.isSingleHit() && is.isSingleHit()) {
      return guarded(List.of(results()));
    }
    if (was.isList() && is.isList()) {
      return new ListAspects(before, after, old, young).aspects();
    }
    return was.isAggregate() && is.isAggregate()
        ? new NumberAspects(before, after, old, young).aspects()
        : Aspects.refused("the two give results of different kinds");
  }

  private static List<String> outputs(DecisionTable table) {
    return table.outputs().stream()
        .map(output -> Names.key(output.symbol().name()) + " " + output.symbol().type())
        .toList();
  }

  /** Where rows contradict each other the result says nothing, but the contradiction counts. */
  private Aspects guarded(List<Aspect> aspects) {
    Optional<Claim> was = Contradictions.of(before, old);
    Optional<Claim> is = Contradictions.of(after, young);
    if (was.isEmpty() && is.isEmpty()) {
      return Aspects.of(aspects);
    }
    Claim never = new Claim.Any(List.of());
    Claim wasTorn = was.orElse(never);
    Claim isTorn = is.orElse(never);
    Claim sound = new Claim.All(List.of(new Claim.Not(wasTorn), new Claim.Not(isTorn)));
    List<Aspect> all = new ArrayList<>();
    aspects.forEach(aspect -> all.add(new GuardedAspect(aspect, sound)));
    all.add(new PresenceAspect("", wasTorn, isTorn, Kind.CONTRADICTION, Kind.NO_CONTRADICTION));
    all.addAll(leftOpen(new Claim.All(List.of(wasTorn, isTorn))));
    return Aspects.of(all);
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

  /** The rows of the table, its default row last. */
  static List<Row> rows(DecisionTable table) {
    List<Row> rows = new ArrayList<>(table.rows());
    table.otherwise().ifPresent(rows::add);
    return rows;
  }
}
