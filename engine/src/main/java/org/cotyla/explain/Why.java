package org.cotyla.explain;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.cotyla.evaluate.Contribution;
import org.cotyla.evaluate.Points;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.protocol.Effect;
import org.cotyla.protocol.Ranking;

/**
 * How an option got its place: what each row adds to it, and what those rows rest on. Immutable.
 *
 * @param recommendation the answer that is explained
 * @param ranking the ranking that the option stands in
 * @param option the option, its place and its points
 * @param reasons every row that speaks for or against it or rules it out: rulings, then points, the
 *     certain before the open and the weightiest first
 * @param premises all that these rows rest on, each once, recorded findings last
 */
public record Why(
    Recommendation recommendation,
    RankingResult ranking,
    RankedOption option,
    List<Reason> reasons,
    List<Premise> premises) {

  /** Rulings first, then the certain, then the weightiest, then in the order of the workbook. */
  static final Comparator<Reason> BY_WEIGHT =
      Comparator.<Reason, Boolean>comparing(reason -> reason.effect() != Effect.RULE_OUT)
          .thenComparing(reason -> !reason.isCertain())
          .thenComparing(reason -> reason.points().abs(), Comparator.reverseOrder());

  public Why {
    reasons = List.copyOf(reasons);
    premises = List.copyOf(premises);
  }

  /**
   * Explains the option of that name, of whichever ranking it stands in.
   *
   * @throws org.cotyla.issue.RejectedException when there is none of that name
   */
  public static Why of(Recommendation recommendation, String option) {
    return of(recommendation, AskedOption.find(recommendation.protocol(), option));
  }

  /** Explains the option. */
  public static Why of(Recommendation recommendation, AskedOption asked) {
    return of(recommendation, asked.ranking(), asked.option().name());
  }

  /**
   * Explains an option by its exact name.
   *
   * @throws IllegalArgumentException when the answer has no such option in that ranking
   */
  public static Why of(Recommendation recommendation, Ranking ranking, String option) {
    RankingResult result = result(recommendation, ranking);
    RankedOption ranked = option(result, option);
    return new Why(
        recommendation,
        result,
        ranked,
        reasons(recommendation, ranked),
        Premises.of(
            recommendation, ranked.contributions().stream().map(Contribution::firing).toList()));
  }

  static RankingResult result(Recommendation recommendation, Ranking ranking) {
    return recommendation
        .ranking(ranking.name())
        .orElseThrow(
            () -> new IllegalArgumentException("there is no ranking `" + ranking.name() + "`"));
  }

  static RankedOption option(RankingResult result, String name) {
    return result
        .option(name)
        .orElseThrow(() -> new IllegalArgumentException("there is no option `" + name + "`"));
  }

  static List<Reason> reasons(Recommendation recommendation, RankedOption option) {
    return option.contributions().stream()
        .map(contribution -> Reason.of(contribution, recommendation.protocol()))
        .sorted(BY_WEIGHT)
        .toList();
  }

  /** The rows that rule it out, or may. */
  public List<Reason> rulings() {
    return reasons.stream().filter(reason -> reason.effect() == Effect.RULE_OUT).toList();
  }

  /** The rows that give or take points for certain. */
  public List<Reason> votes() {
    return reasons.stream()
        .filter(reason -> reason.effect() != Effect.RULE_OUT && reason.isCertain())
        .toList();
  }

  /** The rows that give or take points only if open data turn out that way. */
  public List<Reason> possibleVotes() {
    return reasons.stream()
        .filter(reason -> reason.effect() != Effect.RULE_OUT && !reason.isCertain())
        .toList();
  }

  /** The sum of what is certain, added up again from the rows that are named here. */
  public BigDecimal sum() {
    return sum(Reason::isCertain);
  }

  /** Whether the rows that are named here give all the points that are shown, and no others. */
  public boolean addsUp() {
    Points points = option.points();
    BigDecimal least = sum(reason -> reason.isCertain() || reason.points().signum() < 0);
    BigDecimal most = sum(reason -> reason.isCertain() || reason.points().signum() > 0);
    return sum().compareTo(points.now()) == 0
        && least.compareTo(points.least()) == 0
        && most.compareTo(points.most()) == 0;
  }

  private BigDecimal sum(Predicate<Reason> counted) {
    return reasons.stream()
        .filter(counted)
        .map(Reason::points)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
