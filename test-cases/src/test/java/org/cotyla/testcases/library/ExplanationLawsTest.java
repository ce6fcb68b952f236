package org.cotyla.testcases.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explain.AskedOption;
import org.cotyla.explain.Lift;
import org.cotyla.explain.Reason;
import org.cotyla.explain.Ruling;
import org.cotyla.explain.Supposition;
import org.cotyla.explain.WhatIf;
import org.cotyla.explain.Why;
import org.cotyla.explain.WhyNot;
import org.cotyla.finding.Given;
import org.cotyla.testcases.house.House;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Explanations of the case library")
class ExplanationLawsTest {

  /** Of the rulings of the library, every so many is tried again with a case of its own. */
  private static final int EVERY_SO_MANY = 40;

  private static final Engine ENGINE = House.engine();

  /** Where a row counts: the case and the option's explanation. */
  private record Counted(Recommendation advice, Why why, Reason reason) {}

  @Test
  @DisplayName("for every case and option the rows that are named sum to the points shown")
  void sums() {
    int options = 0;
    for (LibraryCase one : CaseLibrary.cases()) {
      Recommendation advice = ENGINE.evaluate(one.read());
      for (RankingResult ranking : advice.rankings()) {
        for (RankedOption option : ranking.options()) {
          Why why = Why.of(advice, option.name());
          BigDecimal sum =
              why.votes().stream().map(Reason::points).reduce(BigDecimal.ZERO, BigDecimal::add);
          assertThat(sum)
              .as(one.displayName() + " " + option.name())
              .isEqualByComparingTo(option.points().now());
          assertThat(why.addsUp()).as(one.displayName() + " " + option.name()).isTrue();
          assertThat(why.reasons()).hasSameSizeAs(option.contributions());
          options++;
        }
      }
    }
    assertThat(options).isGreaterThan(3000);
  }

  @Test
  @DisplayName("removing any one row that is named changes the sum by just that row's points")
  void removal() {
    Map<String, List<Counted>> byRow = new LinkedHashMap<>();
    for (LibraryCase one : CaseLibrary.cases()) {
      Recommendation advice = ENGINE.evaluate(one.read());
      for (RankingResult ranking : advice.rankings()) {
        for (RankedOption option : ranking.options()) {
          Why why = Why.of(advice, option.name());
          for (Reason reason : why.votes()) {
            byRow
                .computeIfAbsent(reason.row().id(), id -> new ArrayList<>())
                .add(new Counted(advice, why, reason));
          }
        }
      }
    }
    assertThat(byRow).hasSizeGreaterThan(100);
    byRow.forEach(ExplanationLawsTest::removed);
  }

  /** The protocol without the row, on every case where the row counts. */
  private static void removed(String id, List<Counted> places) {
    Engine without = Engine.of(WithoutRow.of(ENGINE.protocol(), id));
    for (Counted counted : places) {
      RankedOption then =
          without
              .evaluate(counted.advice().findings())
              .ranking(counted.why().ranking().ranking().name())
              .flatMap(ranking -> ranking.option(counted.why().option().name()))
              .orElseThrow();
      assertThat(counted.why().sum().subtract(then.points().now()))
          .as(id + " in " + counted.advice().findings().title())
          .isEqualByComparingTo(counted.reason().points());
    }
  }

  @Test
  @DisplayName("each finding that is said to lift a ruling lifts it, and no proof of none is wrong")
  void lifts() {
    int rulings = 0;
    int tried = 0;
    Map<Boolean, Integer> found = new HashMap<>();
    for (LibraryCase one : CaseLibrary.cases()) {
      Recommendation advice = ENGINE.evaluate(one.read());
      for (RankingResult ranking : advice.rankings()) {
        for (RankedOption option : ranking.ruledOut()) {
          if (rulings++ % EVERY_SO_MANY == 0) {
            AskedOption asked = AskedOption.find(ENGINE.protocol(), option.name());
            for (Ruling ruling : WhyNot.of(ENGINE, advice, asked, Optional.empty()).rulings()) {
              found.merge(ruling.lifts().isEmpty(), 1, Integer::sum);
              for (Lift lift : ruling.lifts()) {
                for (Interval part : lift.values().parts()) {
                  tried += lifted(one, option, ruling, lift, part);
                }
              }
            }
          }
        }
      }
    }
    assertThat(tried).isGreaterThan(50);
    assertThat(found.get(false)).isPositive();
  }

  /** The case as a person would change it, at the ends of the values that are said to lift. */
  private static int lifted(
      LibraryCase one, RankedOption option, Ruling ruling, Lift lift, Interval part) {
    List<Value> ends = new ArrayList<>();
    if (part.low() != null && part.lowIncluded()) {
      ends.add(part.low());
    }
    if (part.high() != null && part.highIncluded()) {
      ends.add(part.high());
    }
    for (Value value : ends) {
      Supposition supposed =
          new Supposition(
              lift.field().name(), Optional.of(new Given.Written(value.plain(), Optional.empty())));
      RankedOption then =
          WhatIf.of(ENGINE, one.read(), List.of(supposed)).comparison().after().rankings().stream()
              .flatMap(ranking -> ranking.option(option.name()).stream())
              .findFirst()
              .orElseThrow();
      assertThat(then.rulings())
          .as(one.displayName() + " " + lift.field().name() + " " + value.plain())
          .noneMatch(row -> row.firing().row().id().equals(ruling.reason().row().id()));
      assertThat(then.rulings().isEmpty()).isEqualTo(lift.frees());
    }
    return ends.size();
  }
}
