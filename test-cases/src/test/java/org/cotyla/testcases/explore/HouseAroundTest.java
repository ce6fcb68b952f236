package org.cotyla.testcases.explore;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explore.ChangeSet;
import org.cotyla.explore.Goal;
import org.cotyla.explore.Influence;
import org.cotyla.explore.Margin;
import org.cotyla.explore.Margins;
import org.cotyla.explore.SmallestChange;
import org.cotyla.explore.WhatMatters;
import org.cotyla.finding.Datum;
import org.cotyla.finite.Representative;
import org.cotyla.json.CaseJson;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.ShownAs;
import org.cotyla.testcases.house.House;
import org.cotyla.value.Truth;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Source of every expectation: the house protocol, run on each case named here. */
@DisplayName("Around cases of the library")
class HouseAroundTest {

  private static final Engine ENGINE = House.engine();

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "incomplete/contact-missing",
        "incomplete/p10-ischial-lysis-missing",
        "incomplete/abductors-missing",
        "incomplete/porous-metal-unknown-in-3a",
        "incomplete/migration-as-a-range",
        "loose-cup-up-and-out"
      })
  @DisplayName("what is proven not to matter changes nothing that is shown, whatever its value")
  void idleData(String name) throws IOException {
    Recommendation advice = advice(name);
    WhatMatters matters = WhatMatters.of(ENGINE, advice);
    Random random = new Random(1);
    assertThat(matters.data()).hasSameSizeAs(advice.missing());
    assertThat(matters.data()).allSatisfy(one -> assertThat(one.undecided()).isEmpty());
    for (Influence influence : matters.data()) {
      if (influence.cannotMatter()) {
        Map<String, Value> filling = filling(advice, random);
        List<String> before = shown(run(advice, filling));
        for (int i = 0; i < 8; i++) {
          filling.put(influence.datum().field().name(), any(influence.datum(), random));
          assertThat(shown(run(advice, filling)))
              .as(influence.datum().field().name())
              .isEqualTo(before);
        }
      }
    }
  }

  @Test
  @DisplayName("missing host contact heads the short form, and what is not asked stands at its end")
  void shortForm() throws IOException {
    Recommendation advice = advice("incomplete/contact-missing");
    assertThat(WhatMatters.isQuick(advice)).isTrue();
    WhatMatters.Short inShort = WhatMatters.of(ENGINE, advice).shortForm();
    assertThat(inShort.headline())
        .extracting(one -> one.datum().field().name())
        .containsExactly("host bone contact");
    assertThat(inShort.none()).extracting(one -> one.datum().field().name()).contains("d dimer");
    assertThat(inShort.undecided()).isEmpty();
    assertThat(WhatMatters.isQuick(advice("incomplete/almost-nothing-known"))).isFalse();
  }

  @Test
  @DisplayName("the class turns 3B with the ischial lysis at 15 mm, and with nothing less")
  void classChange() throws IOException {
    SmallestChange change = change("loose-cup-up-and-out", "defect class=3B");
    assertThat(change.end()).isEqualTo(SmallestChange.End.COMPLETE);
    assertThat(change.sets())
        .anySatisfy(
            way -> {
              assertThat(way.moves()).hasSize(1);
              assertThat(way.moves().get(0).before().field().name()).isEqualTo("ischial lysis");
              assertThat(way.moves().get(0).to()).isEqualTo(Value.of(15));
            });
  }

  @Test
  @DisplayName("each option's smallest change brings it first when it is applied")
  void firstOptions() throws IOException {
    Recommendation advice = advice("loose-cup-up-and-out");
    Ranking ranking = ENGINE.protocol().rankings().get(0);
    ranking
        .options()
        .forEach(
            option -> {
              Goal goal = new Goal.First(ranking, option.name());
              SmallestChange change = SmallestChange.of(ENGINE, advice, goal, 2);
              assertThat(change.end()).isNotEqualTo(SmallestChange.End.UNDECIDED);
              for (ChangeSet way : change.sets()) {
                assertThat(goal.claim().truth(way.after())).isEqualTo(Truth.TRUE);
              }
            });
  }

  @Test
  @DisplayName("migration of 34 mm stands above the line at 30 and holds over an error of 3 mm")
  void margin() throws IOException {
    Margins margins = Margins.of(ENGINE, advice("loose-cup-up-and-out"));
    Margin migration =
        margins.margins().stream()
            .filter(one -> one.datum().field().name().equals("hip centre migration"))
            .findFirst()
            .orElseThrow();
    assertThat(migration.below().orElseThrow().at()).isEqualTo(Value.of(30));
    assertThat(migration.below().orElseThrow().beyond()).isFalse();
    assertThat(migration.error().orElseThrow().verdict()).isEqualTo(Margin.Verdict.HOLDS);
  }

  private static SmallestChange change(String name, String wanted) throws IOException {
    Goal goal = org.cotyla.explore.Goals.one(ENGINE.protocol(), wanted);
    return SmallestChange.of(ENGINE, advice(name), goal, 1);
  }

  private static Recommendation advice(String name) throws IOException {
    Path file =
        Path.of(System.getProperty("cotyla.home", ".."), "test-cases", "cases", name + ".json");
    return ENGINE.evaluate(CaseJson.read(Files.readAllBytes(file)));
  }

  private static Recommendation run(Recommendation advice, Map<String, Value> filling) {
    return ENGINE.evaluate(Parts.with(advice.findings(), filling));
  }

  private static Map<String, Value> filling(Recommendation advice, Random random) {
    Map<String, Value> filling = new HashMap<>();
    for (Datum datum : Parts.open(advice.findings())) {
      filling.put(datum.field().name(), any(datum, random));
    }
    return filling;
  }

  private static Value any(Datum datum, Random random) {
    ValueSet values = datum.value().values();
    return Representative.sample(values, new java.util.SplittableRandom(random.nextLong()));
  }

  /** Every row that counts in what is shown, with what it gives. */
  private static List<String> shown(Recommendation answer) {
    return answer.decisions().stream()
        .filter(result -> result.table().votes() || result.table().shownAs() != ShownAs.WORKING)
        .flatMap(result -> result.counting().stream())
        .map(firing -> firing.row().id() + firing.results())
        .toList();
  }
}
