package org.cotyla.finite;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.cotyla.finite.Alternatives.Leaf;
import org.cotyla.finite.Circuit.Term;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Effect;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Vote;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;
import org.jspecify.annotations.Nullable;

/** One ranking as a solver sees it: who is ruled out, and who comes first by points. */
final class RankingEncoding {

  private final ProtocolEncoding protocol;
  private final Circuit circuit;
  private final Ranking ranking;
  private final Map<Vote, List<Integer>> voices = new LinkedHashMap<>();
  private final Map<String, Integer> available = new HashMap<>();
  private final int decimals;
  private final Optional<RankingEncoding> twin;
  private @Nullable Alternatives first;

  /**
   * @param twin the same ranking of another protocol, with the same options in the same order
   */
  RankingEncoding(ProtocolEncoding protocol, Ranking ranking, Optional<RankingEncoding> twin) {
    this.protocol = protocol;
    this.twin = twin;
    this.circuit = protocol.circuit();
    this.ranking = ranking;
    for (DecisionTable voter : ranking.voters()) {
      listen(voter);
    }
    this.decimals =
        voices.keySet().stream()
            .mapToInt(vote -> Math.max(0, vote.points().stripTrailingZeros().scale()))
            .max()
            .orElse(0);
    for (Option option : ranking.options()) {
      List<Integer> barred = new ArrayList<>();
      voices.forEach(
          (vote, literals) -> {
            if (vote.option().equals(option.name()) && vote.effect() == Effect.RULE_OUT) {
              barred.addAll(literals);
            }
          });
      available.put(option.name(), -circuit.or(barred));
    }
  }

  /** Rows speak each for itself; under hit policy A those that agree speak once. */
  private void listen(DecisionTable voter) {
    TableEncoding table = protocol.table(voter);
    Map<Vote, List<Integer>> ofTable = new LinkedHashMap<>();
    for (Row row : voter.rows()) {
      row.vote()
          .ifPresent(
              vote ->
                  ofTable.computeIfAbsent(vote, same -> new ArrayList<>()).add(table.speaks(row)));
    }
    boolean once = voter.hitPolicy() == HitPolicy.ANY;
    ofTable.forEach(
        (vote, literals) ->
            voices
                .computeIfAbsent(vote, same -> new ArrayList<>())
                .addAll(once ? List.of(circuit.or(literals)) : literals));
  }

  /** Holds when no row rules the option out. */
  int available(String option) {
    return available.getOrDefault(option, circuit.no());
  }

  /** The points of an option, in the smallest unit that any vote has. */
  List<Term> points(String option, int sign) {
    List<Term> terms = new ArrayList<>();
    voices.forEach(
        (vote, literals) -> {
          if (vote.option().equals(option) && vote.effect() != Effect.RULE_OUT) {
            BigInteger weight = units(vote).multiply(BigInteger.valueOf(sign));
            literals.stream()
                .filter(literal -> literal != circuit.no())
                .forEach(literal -> terms.add(new Term(literal, weight)));
          }
        });
    return terms;
  }

  private BigInteger units(Vote vote) {
    BigDecimal points = vote.effect() == Effect.OPPOSE ? vote.points().negate() : vote.points();
    return points.movePointRight(decimals).toBigIntegerExact();
  }

  /** Which option comes first; nothing when all are ruled out. */
  Alternatives first() {
    Alternatives known = first;
    if (known == null) {
      known = encode();
      first = known;
      twin.ifPresent(this::leadsAsIn);
    }
    return known;
  }

  private Alternatives encode() {
    List<Leaf> leaves = new ArrayList<>();
    List<Integer> anyone = new ArrayList<>();
    for (Option option : ranking.options()) {
      boolean possible = protocol.hull().canBeFirst(ranking.name(), option.name());
      if (possible && available(option.name()) != circuit.no()) {
        int leads = circuit.unknown();
        circuit.demand(-leads, available(option.name()));
        leaves.add(new Leaf(PossibleValues.of(Value.of(option.name())), leads));
      }
      anyone.add(available(option.name()));
    }
    int nobody = -circuit.or(anyone);
    if (nobody != circuit.no()) {
      leaves.add(new Leaf(PossibleValues.nothing(ValueType.TEXT), nobody));
    }
    circuit.demandExactlyOne(leaves.stream().map(Leaf::literal).toList());
    for (Leaf leaf : leaves) {
      leaf.values().single().ifPresent(value -> beatsAll(value.plain(), leaf.literal()));
    }
    return Alternatives.of(circuit, leaves);
  }

  private void beatsAll(String leader, int leads) {
    boolean leaderSeen = false;
    for (Option other : ranking.options()) {
      if (other.name().equals(leader)) {
        leaderSeen = true;
        continue;
      }
      List<Term> difference = new ArrayList<>(points(leader, 1));
      difference.addAll(points(other.name(), -1));
      circuit.demandAtLeast(
          difference,
          leaderSeen ? BigInteger.ZERO : BigInteger.ONE,
          leads,
          available(other.name()));
    }
  }

  /**
   * Tells the solver what it would else have to find out from the sums: where one option leads here
   * and another there, some vote about one of the two is not the same.
   */
  private void leadsAsIn(RankingEncoding other) {
    Map<String, Integer> unlike = new HashMap<>();
    ranking.options().forEach(option -> unlike.put(option.name(), unlike(option.name(), other)));
    for (Leaf here : first().leaves()) {
      for (Leaf there : other.first().leaves()) {
        if (!here.values().equals(there.values())) {
          List<Integer> either = new ArrayList<>(List.of(-here.literal(), -there.literal()));
          Stream.of(here, there)
              .flatMap(leaf -> leaf.values().single().stream())
              .forEach(option -> either.add(unlike.getOrDefault(option.plain(), circuit.yes())));
          circuit.demandAny(either);
        }
      }
    }
  }

  /** Holds when some vote about the option speaks in one of the two protocols only. */
  private int unlike(String option, RankingEncoding other) {
    Set<Vote> about = new LinkedHashSet<>(voices.keySet());
    about.addAll(other.voices.keySet());
    List<Integer> unlike = new ArrayList<>();
    for (Vote vote : about) {
      if (vote.option().equals(option)) {
        List<Integer> here = new ArrayList<>(voices.getOrDefault(vote, List.of()));
        List<Integer> there = new ArrayList<>(other.voices.getOrDefault(vote, List.of()));
        // Taken out one for one, since each of several rows that cast one vote counts.
        for (Integer shared : List.copyOf(here)) {
          if (there.remove(shared)) {
            here.remove(shared);
          }
        }
        for (int i = 0; i < Math.max(here.size(), there.size()); i++) {
          int one = i < here.size() ? here.get(i) : circuit.no();
          int two = i < there.size() ? there.get(i) : circuit.no();
          unlike.add(circuit.and(one, -two));
          unlike.add(circuit.and(-one, two));
        }
      }
    }
    return circuit.or(unlike);
  }
}
