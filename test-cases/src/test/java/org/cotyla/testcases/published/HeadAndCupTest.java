package org.cotyla.testcases.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.cotyla.testcases.house.Answer;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Head, cup, shell and muscle: what the bearing has to take into account")
class HeadAndCupTest {

  private static Answer sizes(int cup, int head) {
    return OrdinaryCase.planned()
        .with(Map.of("planned cup diameter", cup, "planned head diameter", head))
        .answer();
  }

  @ParameterizedTest(name = "{0} - {1}: {2} points, warned: {3}")
  @CsvSource({
    "66, 28, 3, true",
    "66, 40, 0, false",
    "56, 28, 2, true",
    "62, 36, 0, false",
    "55, 28, 0, false",
    "60, 28, 2, true",
    "61, 28, 2, true",
    "62, 28, 3, true"
  })
  @DisplayName("Cup minus head from 28 mm on warns, from 34 mm on more strongly")
  @LeansOn(
      value = {"KELLEY-1998", "PETER-2011"},
      known = Known.DERIVED)
  void difference(int cup, int head, String points, boolean warned) {
    Answer answer = sizes(cup, head);
    assertThat(answer.value("instability points")).isEqualTo(points);
    assertThat(answer.rows().contains("CA-27")).isEqualTo(warned);
  }

  @ParameterizedTest(name = "abductors {0}: a large head leads: {1}")
  @CsvSource({"working, true", "absent, false"})
  @DisplayName("A larger head protects with working abductors; without them it is not the answer")
  @LeansOn(value = "KUNG-RIES-2007", known = Known.FOUND)
  void headAndAbductors(String abductors, boolean leads) {
    Answer answer = OrdinaryCase.planned().with("abductors", abductors).answer();
    assertThat(answer.bearing().equals("large head")).isEqualTo(leads);
    assertThat(answer.bearingPoints("large head").signum() > 0).isEqualTo(leads);
  }

  @Test
  @DisplayName("Constrained never comes without its ways to fail")
  @LeansOn(value = "NOBLE-2012", known = Known.FOUND)
  void constrainedCaution() {
    Answer answer =
        OrdinaryCase.planned()
            .with(Map.of("abductors", "absent", "prior dislocations", 5, "age", 50))
            .with(Map.of("cup fixation", "well fixed", "kept shell usable", true))
            .with(Map.of("retained shell inner diameter", 44, "reason for revision", "dislocation"))
            .answer();
    assertThat(answer.bearing()).isEqualTo("constrained liner");
    assertThat(answer.rows()).contains("CA-23", "CO-27");
  }

  @Test
  @DisplayName(
      "Dual mobility never comes without the note on the small head coming out of the ball")
  @LeansOn(value = "HAMADOUCHE-2012", known = Known.FOUND)
  void dualMobilityCaution() {
    Answer answer = OrdinaryCase.planned().with("prior dislocations", 2).answer();
    assertThat(answer.bearing()).isEqualTo("dual mobility");
    assertThat(answer.rows()).contains("CA-24", "CO-25", "CO-26");
  }

  @Test
  @DisplayName("No locked liner on a fixation that is not yet safe")
  @LeansOn(
      value = {"NOBLE-2012", "CCJR-LINER"},
      known = Known.FOUND)
  void constrainedOnPoorFixation() {
    OrdinaryCase absent = OrdinaryCase.planned().with("abductors", "absent");
    assertThat(absent.answer().bearingIsRuledOut("constrained liner")).isFalse();
    Answer poor = absent.with("host bone contact", 20).answer();
    assertThat(poor.bearingIsRuledOut("constrained liner")).isTrue();
  }

  @ParameterizedTest(name = "inner diameter {0}: spoken against {1}")
  @CsvSource({"46, true", "47, false", "50, false"})
  @DisplayName("A cemented dual mobility cup needs 2 mm of mantle all round: 43 mm into 47")
  @LeansOn(value = "LINERCEM-TECH", known = Known.DERIVED)
  @LeansOn(value = "MEMORY-BEARING-SIZES", known = Known.FROM_MEMORY)
  void mantle(int inner, boolean against) {
    Answer answer =
        OrdinaryCase.planned()
            .with(
                Map.of(
                    "reason for revision",
                    "wear",
                    "cup fixation",
                    "well fixed",
                    "kept shell usable",
                    true,
                    "retained shell inner diameter",
                    inner))
            .answer();
    assertThat(answer.construct()).isEqualTo("new bearing in the retained cup");
    assertThat(answer.rows().contains("BI-08")).isEqualTo(against);
  }

  @ParameterizedTest(name = "{0}: {1} points")
  @CsvSource({
    "prior dislocations, 1, 3",
    "fused levels, 1, 1",
    "fused levels, 2, 1",
    "fused levels, 3, 2"
  })
  @DisplayName("An earlier dislocation and each length of fusion raise the risk")
  @LeansOn(
      value = {"WETTERS-2013", "BUCKLAND-2017"},
      known = Known.FOUND)
  void riskFactors(String field, int value, String points) {
    Answer answer = OrdinaryCase.planned().with(field, value).answer();
    assertThat(answer.value("instability points")).isEqualTo(points);
  }
}
