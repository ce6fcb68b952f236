package org.cotyla.testcases.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.testcases.trade.Population.everyone;
import static org.cotyla.testcases.trade.Population.proves;

import java.util.List;
import java.util.function.Predicate;
import org.cotyla.testcases.house.DefectPicture;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("Where a plain hemispherical cup holds, and where it fails")
class PlainCupTest {

  private static final Predicate<Outcome> BY_HEMISPHERE = Outcome::isLedByHemisphere;

  @Test
  @DisplayName(
      "Nobody gets a plain hemispherical cup in irradiated bone as first choice, even in 3A")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void irradiatedBone() {
    List<Outcome> irradiated = everyone(o -> o.states("pelvic irradiation", true));
    proves(irradiated, 100, o -> o.ruledOut().contains("hemispherical cup"));
    proves(irradiated, 100, BY_HEMISPHERE.negate());
    assertThat(irradiated).filteredOn(o -> o.isClass("3A")).hasSizeGreaterThan(10);
  }

  @ParameterizedTest
  @EnumSource
  @DisplayName("Irradiation alone takes the plain cup away in every class")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void irradiationAlone(DefectPicture picture) {
    OrdinaryCase irradiated = picture.planned().with("pelvic irradiation", true);
    assertThat(irradiated.answer().construct())
        .isIn("cup-cage", "cup with porous metal augments", "custom triflange");
  }

  @Test
  @DisplayName("An isolated medial defect with a good rim takes a hemispherical cup")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void medialWithGoodRim() {
    List<Outcome> medial =
        Population.ordinary().stream()
            .filter(o -> o.isClass("2C") && o.is("rim support", "good"))
            .filter(o -> !o.is("bone biology", "irradiated") && !o.is("bone biology", "tumour"))
            .toList();
    assertThat(medial).hasSizeGreaterThan(50);
    assertThat(Population.share(medial, BY_HEMISPHERE)).isGreaterThan(0.95);
  }

  @Test
  @DisplayName("With a compromised rim it takes a cage device, or graft where there is no metal")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void medialWithBadRim() {
    List<Outcome> medial =
        Population.ordinary().stream()
            .filter(o -> o.isClass("2C") && o.is("rim support", "compromised"))
            .toList();
    proves(
        medial,
        20,
        o ->
            o.isLedBy("cup-cage", "antiprotrusio cage with graft")
                || o.states("porous metal to hand", false));
  }

  @Test
  @DisplayName("A proven discontinuity never leads to a cup alone")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void provenDiscontinuity() {
    proves(everyone(o -> o.is("discontinuity", "present")), 100, BY_HEMISPHERE.negate());
  }

  @Test
  @DisplayName("A suspected one is always tested in theatre before anything is reamed")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void suspectedDiscontinuity() {
    proves(everyone(o -> o.is("discontinuity", "suspected")), 100, o -> o.rows().contains("CA-08"));
  }

  @Test
  @DisplayName(
      "A missed break makes a hemisphere fail: an ischium that moves sends to the next plan")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void stressTestBeforeCup() {
    proves(everyone(BY_HEMISPHERE), 1000, o -> o.rows().contains("TB-05"));
  }

  @Test
  @DisplayName("In a 3B that is not contained nothing rests on a cup alone")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void worstClass() {
    proves(
        everyone(o -> o.isClass("3B") && o.states("defect contained", false)),
        50,
        BY_HEMISPHERE.negate());
  }

  @Test
  @DisplayName("A well-fixed, well-placed, usable cup in whole bone is kept")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void keepAGoodCup() {
    OrdinaryCase good =
        OrdinaryCase.planned()
            .with("reason for revision", "wear")
            .with("cup fixation", "well fixed")
            .with("kept shell usable", true)
            .with("retained shell inner diameter", 50);
    assertThat(good.answer().construct()).isEqualTo("new bearing in the retained cup");
    assertThat(good.with("cup fixation", "uncertain").answer().construct())
        .isEqualTo("hemispherical cup");
  }
}
