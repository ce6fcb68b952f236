package org.cotyla.testcases.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.testcases.trade.Population.everyone;
import static org.cotyla.testcases.trade.Population.proves;

import java.util.function.Predicate;
import org.cotyla.testcases.house.Answer;
import org.cotyla.testcases.house.DefectPicture;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Reaming and sizing")
class SizingRulesTest {

  private static final Predicate<Outcome> REAMED =
      o -> o.isLedByHemisphere() || o.isLedBy("cup with porous metal augments");

  @Test
  @DisplayName("The cup is 2 to 4 mm over the last reamer, 1 mm in bone that cracks")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void cupOverReamer() {
    Predicate<Outcome> brittle =
        o -> o.states("bone hardness", "sclerotic") || o.is("bone biology", "irradiated");
    proves(everyone(brittle), 100, o -> o.is("cup over reamer", "1"));
    proves(
        everyone(brittle.negate()),
        1000,
        o -> {
          int over = Integer.parseInt(o.values().get("cup over reamer"));
          return over >= 2 && over <= 4;
        });
  }

  @Test
  @DisplayName("The last reamer is the cup less that")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void lastReamer() {
    OrdinaryCase planned = OrdinaryCase.planned().with("planned cup diameter", 56);
    assertThat(planned.answer().calculation("final reamer")).isEqualTo("54");
    Answer soft = planned.with("bone hardness", "soft").answer();
    assertThat(soft.calculation("final reamer")).isEqualTo("53");
  }

  @Test
  @DisplayName("The front-to-back size limits a hemisphere: whatever exceeds it is said")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void frontToBackLimits() {
    Predicate<Outcome> tooLarge =
        o -> o.findings().number("planned cup diameter") > o.findings().number("ap dimension") + 4;
    proves(everyone(REAMED.and(tooLarge)), 50, o -> o.rows().contains("SZ-01"));
    proves(everyone(REAMED.and(tooLarge.negate())), 1000, o -> !o.rows().contains("SZ-01"));
    proves(everyone(tooLarge), 50, o -> o.ruledOut().contains("extra-large cup"));
  }

  @ParameterizedTest(name = "{0} mm in 54 front to back: undersized {1}")
  @CsvSource({"51, true", "52, false", "54, false"})
  @DisplayName("Undersizing is a common error, and is warned of")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void undersizing(int cup, boolean undersized) {
    OrdinaryCase planned = OrdinaryCase.planned().with("ap dimension", 54);
    Answer answer = planned.with("planned cup diameter", cup).answer();
    assertThat(answer.rows().contains("SZ-02")).isEqualTo(undersized);
  }

  @Test
  @DisplayName(
      "Over-reaming the posterior wall is a common error: every reamed cup is warned of it")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void posteriorWall() {
    proves(everyone(REAMED), 1000, o -> o.rows().contains("SZ-08") || o.rows().contains("SZ-09"));
  }

  @Test
  @DisplayName("Defects grow more up and down than front to back: the gap above the cup is said")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void upAndDown() {
    OrdinaryCase longCavity =
        DefectPicture.CLASS_2B.planned().with("ap dimension", 54).with("vertical dimension", 63);
    assertThat(longCavity.answer().rows()).contains("SZ-04");
    assertThat(longCavity.with("vertical dimension", 62).answer().rows()).doesNotContain("SZ-04");
  }

  @Test
  @DisplayName("In class 3A the gap brings an augment forward and a very large cup back")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void gapInSevereLoss() {
    OrdinaryCase round = DefectPicture.CLASS_3A.planned();
    Answer before = round.answer();
    Answer after = round.with("vertical dimension", 70).answer();
    String augments = "cup with porous metal augments";
    assertThat(after.constructPoints(augments)).isGreaterThan(before.constructPoints(augments));
    assertThat(after.constructPoints("extra-large cup"))
        .isLessThan(before.constructPoints("extra-large cup"));
  }
}
