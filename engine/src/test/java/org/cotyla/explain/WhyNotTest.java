package org.cotyla.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.cotyla.caseform.SeedlingProtocol;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.explain.WhyNot.Verdict;
import org.cotyla.finding.Case;
import org.cotyla.issue.RejectedException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Why an option does not stand before another")
class WhyNotTest {

  private static final Engine ENGINE = Engine.of(SeedlingProtocol.protocol());
  private static final Map<String, Object> SOUND =
      Map.of("seed depth", 12, "soil", "loam", "watered", true);
  private static final Map<String, Object> DEEP =
      Map.of("seed depth", 40, "soil", "loam", "watered", true);

  @Test
  @DisplayName("is told by the rows that separate the two, in order of weight")
  void separations() {
    WhyNot whyNot = against(SOUND, "clay pot");
    assertThat(whyNot.against().map(RankedOption::name)).contains("peat pot");
    assertThat(whyNot.verdict()).isEqualTo(Verdict.FEWER_POINTS);
    assertThat(whyNot.separations())
        .extracting(one -> one.reason().row().id() + " " + one.toAsked())
        .containsExactly("PO-1 -3", "PO-2 1");
    assertThat(whyNot.pointsBehind()).isEqualByComparingTo("2");
  }

  @Test
  @DisplayName("holds the first option against the second, and a named one the other way round")
  void firstAgainstSecond() {
    assertThat(against(SOUND, "peat pot").verdict()).isEqualTo(Verdict.STANDS_BEFORE);
    assertThat(against(SOUND, "peat pot").against().map(RankedOption::name)).contains("clay pot");
    WhyNot turned = WhyNot.of(ENGINE, ENGINE.evaluate(Case.of(SOUND)), "open ground", "clay pot");
    assertThat(turned.pointsBehind()).isEqualByComparingTo("1");
  }

  @Test
  @DisplayName("is the order of the options when the points are the same")
  void tie() {
    Engine even =
        Engine.of(SeedlingProtocol.changed(text -> text.replace("favour | 3", "favour | 1")));
    WhyNot whyNot = WhyNot.of(even, even.evaluate(Case.of(SOUND)), "peat pot");
    assertThat(whyNot.verdict()).isEqualTo(Verdict.ORDER_OF_OPTIONS);
    assertThat(whyNot.pointsBehind()).isZero();
  }

  @Test
  @DisplayName("shows the row that rules out, what its tests would fail for, and what lifts it")
  void ruling() {
    WhyNot whyNot = against(DEEP, "open ground");
    assertThat(whyNot.verdict()).isEqualTo(Verdict.RULED_OUT);
    Ruling ruling = whyNot.rulings().get(0);
    assertThat(ruling.reason().row().id()).isEqualTo("PO-3");
    assertThat(ruling.hinges().get(0).failsFor().orElseThrow().plain()).isEqualTo("strong");
    assertThat(ruling.lifts())
        .extracting(lift -> lift.field().name() + " " + lift.values().plain() + " " + lift.frees())
        .containsExactly("seed depth [0..30] true");
    assertThat(ruling.isWhole()).isTrue();
  }

  @Test
  @DisplayName("says as a proof that no single finding lifts a ruling that two findings make")
  void noSingleFinding() {
    Map<String, Object> twice = Map.of("seed depth", 40, "soil", "loam", "watered", false);
    Ruling ruling = against(twice, "open ground").rulings().get(0);
    assertThat(ruling.lifts()).isEmpty();
    assertThat(ruling.isWhole()).isTrue();
  }

  @Test
  @DisplayName("gives values that were tried, and no proof, where a formula blurs the lines")
  void formula() {
    Engine blurred =
        Engine.of(
            SeedlingProtocol.changed(
                text -> text.replace("deep line | 30 |", "deep line | 20 + seeds sown / 10 |")));
    Map<String, Object> findings =
        Map.of("seed depth", 40, "soil", "loam", "watered", true, "seeds sown", 100);
    Ruling ruling =
        WhyNot.of(blurred, blurred.evaluate(Case.of(findings)), "open ground").rulings().get(0);
    assertThat(ruling.isWhole()).isFalse();
    for (Lift lift : ruling.lifts()) {
      assertThat(lift.isWhole()).isFalse();
      lift.values()
          .values()
          .forEach(
              value -> {
                WhatIf then =
                    WhatIf.of(
                        blurred,
                        Case.of(findings),
                        java.util.List.of(Supposition.written(lift.field().name(), value.plain())));
                assertThat(then.comparison().ranking("pot").orElseThrow().noLongerRuledOut())
                    .hasSize(1);
              });
    }
    assertThat(ruling.lifts()).extracting(lift -> lift.field().name()).contains("seeds sown");
  }

  @Test
  @DisplayName("is lifted by a free text only where the text itself does, not by one before it")
  void freeText() {
    Engine labelled =
        Engine.of(
            SeedlingProtocol.changed(
                text ->
                    text.replace(" | vigour | soil | option", " | vigour | label | option")
                        .replace("PO-3 | weak | - |", "PO-3 | - | not(\"none\") |")
                        .replace("PO-5 | - | clay |", "PO-5 | - | \"clay\" |")));
    Map<String, Object> findings =
        Map.of("seed depth", 40, "soil", "loam", "watered", true, "label", "red");
    Ruling ruling =
        WhyNot.of(labelled, labelled.evaluate(Case.of(findings)), "open ground").rulings().get(0);
    assertThat(ruling.lifts())
        .extracting(lift -> lift.field().name() + " " + lift.values().plain())
        .containsExactly("label none");
    assertThat(ruling.isWhole()).isTrue();
  }

  @Test
  @DisplayName("is refused for an option against itself, and for two unknown names at once")
  void refused() {
    assertThatThrownBy(() -> WhyNot.of(ENGINE, sound(), "clay pot", "Clay Pot"))
        .isInstanceOf(RejectedException.class)
        .hasMessageContaining("C045");
    assertThatThrownBy(() -> WhyNot.of(ENGINE, sound(), "clay pit", "peat pit"))
        .hasMessageContaining("clay pot")
        .hasMessageContaining("peat pot");
  }

  private static org.cotyla.evaluate.Recommendation sound() {
    return ENGINE.evaluate(Case.of(SOUND));
  }

  private static WhyNot against(Map<String, Object> findings, String option) {
    return WhyNot.of(ENGINE, ENGINE.evaluate(Case.of(findings)), option);
  }
}
