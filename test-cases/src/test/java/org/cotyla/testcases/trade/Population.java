package org.cotyla.testcases.trade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.cotyla.testcases.house.HardCases;

/** The invented populations, each run once through the house protocol. */
final class Population {

  private Population() {}

  private static final class Ordinary {
    static final List<Outcome> OUTCOMES = OrdinaryMix.cases().stream().map(Outcome::of).toList();
  }

  private static final class Hard {
    static final List<Outcome> OUTCOMES = HardCases.cases(2000).map(Outcome::of).toList();
  }

  /** The ordinary mix: for statements about shares. */
  static List<Outcome> ordinary() {
    return Ordinary.OUTCOMES;
  }

  /** The ordinary mix and the hard cases: for statements without exception. */
  static List<Outcome> everyone() {
    List<Outcome> all = new ArrayList<>(Ordinary.OUTCOMES);
    all.addAll(Hard.OUTCOMES);
    return all;
  }

  static List<Outcome> everyone(Predicate<Outcome> kind) {
    return everyone().stream().filter(kind).toList();
  }

  /** Proves a rule of all outcomes, of which there must be enough; a message names a few others. */
  static void proves(List<Outcome> outcomes, int atLeast, Predicate<Outcome> rule) {
    assertThat(outcomes).as("cases that the rule speaks of").hasSizeGreaterThanOrEqualTo(atLeast);
    assertThat(outcomes.stream().filter(rule.negate()).limit(5)).as("exceptions").isEmpty();
  }

  /** The share of the outcomes that are so, from 0 to 1. */
  static double share(List<Outcome> outcomes, Predicate<Outcome> isSo) {
    return (double) outcomes.stream().filter(isSo).count() / outcomes.size();
  }
}
