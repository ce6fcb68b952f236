package org.cotyla.testcases.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.testcases.trade.Population.everyone;
import static org.cotyla.testcases.trade.Population.proves;

import java.util.Map;
import org.cotyla.testcases.house.Answer;
import org.cotyla.testcases.house.DefectPicture;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("Stability")
class StabilityRulesTest {

  @ParameterizedTest
  @EnumSource
  @DisplayName("A 22 mm head in a 60 mm cup raises the risk of instability")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void smallHeadInLargeCup(DefectPicture picture) {
    OrdinaryCase large = picture.planned().with("planned cup diameter", 60);
    Answer wide = large.with("planned head diameter", 36).answer();
    Answer small = large.with("planned head diameter", 22).answer();
    assertThat(points(small)).isGreaterThanOrEqualTo(points(wide) + 3);
    assertThat(small.value("instability risk")).isIn("raised", "high");
    assertThat(small.rows()).contains("CA-27");
    assertThat(small.bearing()).isNotEqualTo("standard head");
  }

  private static int points(Answer answer) {
    return Integer.parseInt(answer.value("instability points"));
  }

  @Test
  @DisplayName("Absent abductors bring dual mobility or a constrained liner forward")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void absentAbductors() {
    OrdinaryCase working = OrdinaryCase.planned();
    Answer absent = working.with("abductors", "absent").answer();
    for (String bearing : new String[] {"dual mobility", "constrained liner"}) {
      assertThat(absent.bearingPlace(bearing)).isLessThan(working.answer().bearingPlace(bearing));
    }
    assertThat(absent.bearing()).isEqualTo("dual mobility");
  }

  @Test
  @DisplayName("Without abductors no plain head leads where a more stable bearing is in play")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void noPlainHeadWithoutAbductors() {
    proves(
        everyone(
            o ->
                o.is("working abductors", "absent")
                    && o.findings().number("planned cup diameter") >= 46
                    && !o.isLedBy("new bearing in the retained cup")),
        100,
        o -> o.bearing().equals("dual mobility") || o.bearing().equals("constrained liner"));
  }

  @Test
  @DisplayName("Leg length and offset are restored first: it heads every list of measures")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void lengthAndOffsetFirst() {
    for (DefectPicture picture : DefectPicture.values()) {
      Answer answer = picture.planned().with("prior dislocations", 4).answer();
      assertThat(answer.list("Stability measures").get(0))
          .startsWith("Restore leg length and offset first");
    }
    proves(everyone(), 4000, o -> o.rows().contains("IM-01"));
  }

  @Test
  @DisplayName("A locked hip is a last resort: it hardly ever leads, and never on poor fixation")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void lockedHip() {
    assertThat(
            Population.share(Population.ordinary(), o -> o.bearing().equals("constrained liner")))
        .isLessThan(0.01);
    OrdinaryCase absent =
        OrdinaryCase.planned()
            .with(Map.of("abductors", "absent", "prior dislocations", 5))
            .with("host bone contact", 20);
    assertThat(absent.answer().bearingIsRuledOut("constrained liner")).isTrue();
  }

  @Test
  @DisplayName("In an ordinary mix most hips are stable enough for a plain head")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void plainHeads() {
    assertThat(Population.share(Population.ordinary(), o -> o.bearing().endsWith("head")))
        .isGreaterThan(0.5);
  }
}
