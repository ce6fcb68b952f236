package org.cotyla.evaluate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.evaluate.RankedOption.Availability;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Effect;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Vote;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/** Sums the votes for each option and puts the options in order. */
final class RankingStep {

  private final Ranking ranking;

  RankingStep(Ranking ranking) {
    this.ranking = ranking;
  }

  /** One option with its sum, before places are given. */
  private record Sum(
      Option option,
      int order,
      List<Contribution> contributions,
      Points points,
      Availability availability) {

    boolean isOut() {
      return availability == Availability.RULED_OUT;
    }

    /** Whether this can stand before the other when both are available. */
    boolean canLead(Sum other) {
      int difference = points.most().compareTo(other.points.least());
      return difference > 0 || (difference == 0 && order < other.order);
    }
  }

  RankingResult run(Map<DecisionTable, DecisionResult> results) {
    Map<String, List<Contribution>> votes = new HashMap<>();
    for (DecisionTable voter : ranking.voters()) {
      DecisionResult result = results.get(voter);
      if (result != null) {
        voices(result)
            .forEach(
                firing ->
                    firing
                        .row()
                        .vote()
                        .ifPresent(
                            vote ->
                                votes
                                    .computeIfAbsent(vote.option(), name -> new ArrayList<>())
                                    .add(contribution(firing, vote))));
      }
    }
    List<Sum> sums = new ArrayList<>();
    for (Option option : ranking.options()) {
      sums.add(sum(option, sums.size(), votes.getOrDefault(option.name(), List.of())));
    }
    return result(sums);
  }

  /** The rows that speak; under hit policy A rows that agree are one result and speak once. */
  private static Collection<Firing> voices(DecisionResult result) {
    if (result.table().hitPolicy() != HitPolicy.ANY) {
      return result.counting();
    }
    Map<Optional<Vote>, Firing> byVote = new LinkedHashMap<>();
    result.counting().stream()
        .sorted(Comparator.comparing(Firing::standing))
        .forEach(firing -> byVote.putIfAbsent(firing.row().vote(), firing));
    return byVote.values();
  }

  private static Contribution contribution(Firing firing, Vote vote) {
    return new Contribution(
        firing,
        vote.effect(),
        vote.effect() == Effect.OPPOSE ? vote.points().negate() : vote.points());
  }

  private static Sum sum(Option option, int order, List<Contribution> contributions) {
    Availability availability = Availability.AVAILABLE;
    for (Contribution contribution : contributions) {
      if (contribution.effect() == Effect.RULE_OUT) {
        if (contribution.isCertain()) {
          availability = Availability.RULED_OUT;
        } else if (availability == Availability.AVAILABLE) {
          availability = Availability.MAY_BE_RULED_OUT;
        }
      }
    }
    return new Sum(option, order, contributions, Points.of(contributions), availability);
  }

  private RankingResult result(List<Sum> sums) {
    List<Sum> sorted = new ArrayList<>(sums);
    sorted.sort(
        Comparator.comparing(Sum::isOut)
            .thenComparing(sum -> sum.isOut() ? BigDecimal.ZERO : sum.points().now().negate())
            .thenComparingInt(Sum::order));
    List<RankedOption> options = new ArrayList<>();
    ValueSet first = ValueSet.none(ValueType.TEXT);
    for (Sum sum : sorted) {
      boolean canBeFirst = canBeFirst(sum, sums);
      if (canBeFirst) {
        first = first.union(ValueSet.of(Value.of(sum.option().name())));
      }
      options.add(
          new RankedOption(
              sum.option(),
              options.size() + 1,
              sum.points(),
              sum.availability(),
              canBeFirst,
              tiedWith(sum, sums),
              sum.contributions()));
    }
    boolean noneLeft = sums.stream().noneMatch(sum -> sum.availability() == Availability.AVAILABLE);
    return new RankingResult(ranking, options, new PossibleValues(first, noneLeft));
  }

  private static boolean canBeFirst(Sum sum, List<Sum> sums) {
    return !sum.isOut()
        && sums.stream()
            .filter(other -> other != sum && other.availability() == Availability.AVAILABLE)
            .allMatch(sum::canLead);
  }

  private static List<String> tiedWith(Sum sum, List<Sum> sums) {
    if (sum.isOut() || !sum.points().isCertain()) {
      return List.of();
    }
    return sums.stream()
        .filter(other -> other != sum && !other.isOut() && other.points().isCertain())
        .filter(other -> other.points().now().compareTo(sum.points().now()) == 0)
        .map(other -> other.option().name())
        .toList();
  }
}
