package org.cotyla.explain;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankedOption.Availability;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;
import org.cotyla.protocol.Effect;

/**
 * Why an option does not stand before another: the rows that separate the two, and what rules the
 * option out. Immutable.
 *
 * @param recommendation the answer that is explained
 * @param ranking the ranking that both stand in
 * @param option the option that was asked about
 * @param against the option that it is held against; absent when the ranking has no other
 * @param verdict what settles which of the two stands first
 * @param separations the rows that separate the two, the certain before the open and the weightiest
 *     first
 * @param rulings the rows that rule the option out, or may
 * @param premises all that these rows rest on, each once, recorded findings last
 */
public record WhyNot(
    Recommendation recommendation,
    RankingResult ranking,
    RankedOption option,
    Optional<RankedOption> against,
    Verdict verdict,
    List<Separation> separations,
    List<Ruling> rulings,
    List<Premise> premises) {

  /** What settles which of two options stands first. */
  public enum Verdict {
    /** The option that was asked about stands before the other. */
    STANDS_BEFORE("stands before"),
    /** A row bars it, whatever its points. */
    RULED_OUT("ruled out"),
    /** It has fewer points. */
    FEWER_POINTS("fewer points"),
    /** Both have the same points, and the other comes first in the order of the protocol. */
    ORDER_OF_OPTIONS("order of options");

    private final String word;

    Verdict(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  private static final Comparator<Separation> BY_WEIGHT =
      Comparator.<Separation, Boolean>comparing(one -> !one.isCertain())
          .thenComparing(one -> one.toAsked().abs(), Comparator.reverseOrder());

  public WhyNot {
    separations = List.copyOf(separations);
    rulings = List.copyOf(rulings);
    premises = List.copyOf(premises);
  }

  /**
   * Holds an option against the one that comes first; the one that comes first against the second.
   *
   * @throws RejectedException when there is no option of that name
   */
  public static WhyNot of(Engine engine, Recommendation recommendation, String option) {
    AskedOption asked = AskedOption.find(recommendation.protocol(), option);
    return of(engine, recommendation, asked, Optional.empty());
  }

  /**
   * Holds an option against another of the same ranking.
   *
   * @throws RejectedException listing every fault of the two names
   */
  public static WhyNot of(
      Engine engine, Recommendation recommendation, String option, String against) {
    Issues issues = new Issues();
    List<AskedOption> asked =
        AskedOption.found(recommendation.protocol(), option, Optional.empty(), "option", issues);
    Optional<String> ranking = asked.stream().map(one -> one.ranking().name()).findFirst();
    List<AskedOption> other =
        AskedOption.found(recommendation.protocol(), against, ranking, "against", issues);
    if (issues.hasErrors()) {
      throw new RejectedException(issues.list());
    }
    return of(engine, recommendation, asked.get(0), Optional.of(other.get(0)));
  }

  /**
   * Holds an option against another of the same ranking.
   *
   * @param engine the engine that gave the answer, on which single findings are tried
   * @param against the other option; the one that comes first when absent
   * @throws RejectedException when the two are one, or of two rankings
   */
  public static WhyNot of(
      Engine engine,
      Recommendation recommendation,
      AskedOption asked,
      Optional<AskedOption> against) {
    against.ifPresent(other -> requirePair(asked, other));
    RankingResult ranking = Why.result(recommendation, asked.ranking());
    RankedOption option = Why.option(ranking, asked.option().name());
    Optional<RankedOption> other =
        against
            .map(named -> Why.option(ranking, named.option().name()))
            .or(() -> ranking.options().stream().filter(one -> one != option).findFirst());
    List<Separation> separations = separations(recommendation, option, other);
    List<Ruling> rulings = new Lifts(engine, recommendation, ranking, option).rulings();
    return new WhyNot(
        recommendation,
        ranking,
        option,
        other,
        other.map(one -> verdict(option, one)).orElse(alone(option)),
        separations,
        rulings,
        Premises.of(
            recommendation,
            Stream.concat(
                    separations.stream().map(Separation::reason),
                    rulings.stream().map(Ruling::reason))
                .map(reason -> reason.contribution().firing())
                .toList()));
  }

  private static void requirePair(AskedOption asked, AskedOption other) {
    Issues issues = new Issues();
    Place place = new Place.Whole("against `" + other.option().name() + "`");
    if (asked.option().equals(other.option())) {
      issues.error("C045", place, "an option cannot be held against itself");
    } else if (!asked.ranking().equals(other.ranking())) {
      issues.error(
          "C045",
          place,
          "it is a "
              + other.ranking().name()
              + ", the option asked about a "
              + asked.ranking().name(),
          "name two options of one ranking");
    }
    if (issues.hasErrors()) {
      throw new RejectedException(issues.list());
    }
  }

  private static Verdict alone(RankedOption option) {
    return isOut(option) ? Verdict.RULED_OUT : Verdict.STANDS_BEFORE;
  }

  private static Verdict verdict(RankedOption option, RankedOption other) {
    if (option.place() < other.place()) {
      return isOut(option) ? Verdict.RULED_OUT : Verdict.STANDS_BEFORE;
    }
    if (isOut(option)) {
      return Verdict.RULED_OUT;
    }
    int order = option.points().now().compareTo(other.points().now());
    return order < 0 ? Verdict.FEWER_POINTS : Verdict.ORDER_OF_OPTIONS;
  }

  private static boolean isOut(RankedOption option) {
    return option.availability() == Availability.RULED_OUT;
  }

  /** The other option's rulings separate too; those of the option asked about stand apart. */
  private static List<Separation> separations(
      Recommendation recommendation, RankedOption option, Optional<RankedOption> other) {
    List<Separation> separations = new ArrayList<>();
    for (Reason reason : Why.reasons(recommendation, option)) {
      if (reason.effect() != Effect.RULE_OUT) {
        separations.add(new Separation(reason, option.name(), reason.points()));
      }
    }
    other.ifPresent(
        against ->
            Why.reasons(recommendation, against)
                .forEach(
                    reason ->
                        separations.add(
                            new Separation(reason, against.name(), reason.points().negate()))));
    separations.sort(BY_WEIGHT);
    return separations;
  }

  /** How many points the option has less than the other; below 0 when it has more. */
  public BigDecimal pointsBehind() {
    return against
        .map(other -> other.points().now().subtract(option.points().now()))
        .orElse(BigDecimal.ZERO);
  }
}
