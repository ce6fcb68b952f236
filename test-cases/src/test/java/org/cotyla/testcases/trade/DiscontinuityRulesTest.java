package org.cotyla.testcases.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.testcases.trade.Population.proves;

import java.util.Map;
import java.util.function.Predicate;
import org.cotyla.testcases.house.DefectPicture;
import org.cotyla.testcases.house.House;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("A discontinuity is best served by a custom triflange")
class DiscontinuityRulesTest {

  private static final Map<String, Object> LONG_STANDING =
      Map.of("column fracture line", "both columns", "break onset", "long standing");

  @ParameterizedTest
  @EnumSource
  @DisplayName("A long-standing one in an ordinary patient: custom triflange, in every class")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void chronic(DefectPicture picture) {
    assertThat(picture.planned().with(LONG_STANDING).answer().construct())
        .isEqualTo("custom triflange");
  }

  @Test
  @DisplayName("In the fit and in sound bone it leads whenever it can be had, but for a rimless 2C")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void wheneverItCanBeHad() {
    Predicate<Outcome> fit =
        o -> !o.states("frailty", "frail") && o.findings().number("life expectancy") >= 5;
    Predicate<Outcome> chronic =
        o -> o.is("discontinuity", "present") && o.is("discontinuity type", "chronic");
    // There the cup-cage answers the medial wall, the rim and the break at once.
    Predicate<Outcome> medialWithoutRim =
        o -> o.isClass("2C") && o.is("rim support", "compromised");
    Predicate<Outcome> canBeHad =
        o -> !o.ruledOut().contains("custom triflange") && o.is("bone biology", "normal");
    proves(
        Population.everyone(fit.and(chronic).and(canBeHad).and(medialWithoutRim.negate())),
        20,
        o -> o.isLedBy("custom triflange"));
  }

  @Test
  @DisplayName("Its cost is set against repeated failures, in the reason that is given")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void cost() {
    assertThat(
            House.engine()
                .protocol()
                .allRows()
                .filter(row -> row.id().equals("VP-22"))
                .map(row -> row.because()))
        .singleElement()
        .asString()
        .contains("cost stands against repeated failures");
  }

  @ParameterizedTest
  @EnumSource(names = {"CLASS_2B", "CLASS_3A", "CLASS_3B"})
  @DisplayName("Where it cannot be had a cup-cage or distraction takes its place, never a plate")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void withoutCustomDevice(DefectPicture picture) {
    assertThat(
            picture
                .planned()
                .with(LONG_STANDING)
                .with("custom device obtainable", false)
                .answer()
                .construct())
        .isIn("cup-cage", "distraction with cup and augments");
  }
}
