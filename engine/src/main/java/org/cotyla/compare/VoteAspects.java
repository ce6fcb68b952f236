package org.cotyla.compare;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.cotyla.compare.Difference.Kind;
import org.cotyla.finite.Claim;
import org.cotyla.finite.Claim.Weighted;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Effect;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Vote;

/** What voting tables of one side do to the options, all of them taken together. */
final class VoteAspects {

  private final List<DecisionTable> tables;
  private final int side;

  private VoteAspects(List<DecisionTable> tables, Side side) {
    this.tables = tables;
    this.side = side.number();
  }

  /** For each option that any of the tables names: its points, and whether it is ruled out. */
  static List<Aspect> between(
      List<DecisionTable> before, List<DecisionTable> after, Side old, Side young) {
    VoteAspects was = new VoteAspects(before, old);
    VoteAspects is = new VoteAspects(after, young);
    Set<String> options = new LinkedHashSet<>(was.options());
    options.addAll(is.options());
    List<Aspect> aspects = new ArrayList<>();
    for (String option : options) {
      aspects.add(
          new SumAspect(option, "points", was.points(option), is.points(option), Kind.POINTS));
      aspects.add(
          new PresenceAspect(
              option,
              was.ruledOut(option),
              is.ruledOut(option),
              Kind.RULED_OUT,
              Kind.NO_LONGER_RULED_OUT));
    }
    return aspects;
  }

  private Set<String> options() {
    Set<String> options = new LinkedHashSet<>();
    tables.forEach(table -> votes(table).keySet().forEach(vote -> options.add(vote.option())));
    return options;
  }

  private static Map<Vote, List<Claim>> votes(DecisionTable table) {
    Map<Vote, List<Claim>> votes = new LinkedHashMap<>();
    for (Row row : TablePair.rows(table)) {
      row.vote()
          .ifPresent(
              vote ->
                  votes
                      .computeIfAbsent(vote, same -> new ArrayList<>())
                      .add(new Claim.Counts(table, row)));
    }
    return votes;
  }

  /** Rows speak each for itself; under hit policy A those of a table that agree speak once. */
  private List<Weighted> points(String option) {
    List<Weighted> points = new ArrayList<>();
    for (DecisionTable table : tables) {
      boolean once = table.hitPolicy() == HitPolicy.ANY;
      votes(table)
          .forEach(
              (vote, rows) -> {
                if (vote.option().equals(option) && vote.effect() != Effect.RULE_OUT) {
                  boolean against = vote.effect() == Effect.OPPOSE;
                  BigDecimal weight = against ? vote.points().negate() : vote.points();
                  List<Claim> each = once ? List.of(new Claim.Any(rows)) : rows;
                  each.forEach(
                      claim -> points.add(new Weighted(new Claim.Of(side, claim), weight)));
                }
              });
    }
    return points;
  }

  private Claim ruledOut(String option) {
    List<Claim> bars = new ArrayList<>();
    for (DecisionTable table : tables) {
      votes(table)
          .forEach(
              (vote, rows) -> {
                if (vote.option().equals(option) && vote.effect() == Effect.RULE_OUT) {
                  bars.addAll(rows);
                }
              });
    }
    return new Claim.Of(side, new Claim.Any(bars));
  }
}
