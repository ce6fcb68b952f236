package org.cotyla.testcases.house;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/** A recommendation, read in the words that checks use. Immutable. */
public record Answer(Recommendation recommendation) {

  /** What a derived field came to, as people read it: one value, or all that are possible. */
  public String value(String derivedField) {
    return possible(derivedField).plain();
  }

  public PossibleValues possible(String derivedField) {
    return recommendation
        .value(derivedField)
        .orElseThrow(() -> new IllegalArgumentException("nothing derives `" + derivedField + "`"));
  }

  /** What a calculation came to. */
  public String calculation(String name) {
    return Optional.ofNullable(recommendation.calculations().get(name)).orElseThrow().plain();
  }

  public String construct() {
    return leader("construct");
  }

  public String bearing() {
    return leader("bearing");
  }

  public boolean constructIsRuledOut(String option) {
    return isRuledOut("construct", option);
  }

  public boolean bearingIsRuledOut(String option) {
    return isRuledOut("bearing", option);
  }

  public BigDecimal constructPoints(String option) {
    return option("construct", option).points().now();
  }

  public BigDecimal bearingPoints(String option) {
    return option("bearing", option).points().now();
  }

  /** The place of a bearing, counted from 1. */
  public int bearingPlace(String option) {
    return option("bearing", option).place();
  }

  /** What each row that counts gives, for a decision whose result is a list of sentences. */
  public List<String> list(String decision) {
    return recommendation.decision(decision).orElseThrow().counting().stream()
        .map(firing -> firing.results().get(0).plain())
        .toList();
  }

  /** The rows that count in any decision, by their ids. */
  public List<String> rows() {
    return recommendation.firings().stream()
        .filter(Firing::counts)
        .map(firing -> firing.row().id())
        .toList();
  }

  /** The given fields that are open and may still matter. */
  public List<String> missing() {
    return recommendation.missing().stream()
        .filter(datum -> datum.mayMatter())
        .map(datum -> datum.datum().field().name())
        .toList();
  }

  /** How the options of a ranking stand, in one line: for messages of failed checks. */
  public String standing(String ranking) {
    return result(ranking).options().stream()
        .map(o -> o.name() + " " + (isOut(o) ? "out" : Value.of(o.points().now()).plain()))
        .toList()
        .toString();
  }

  public RankingResult result(String ranking) {
    return recommendation.ranking(ranking).orElseThrow();
  }

  private String leader(String ranking) {
    return result(ranking).leader().map(RankedOption::name).orElse("nothing");
  }

  private boolean isRuledOut(String ranking, String option) {
    return isOut(option(ranking, option));
  }

  private RankedOption option(String ranking, String name) {
    return result(ranking).option(name).orElseThrow();
  }

  private static boolean isOut(RankedOption option) {
    return option.availability() == RankedOption.Availability.RULED_OUT;
  }
}
