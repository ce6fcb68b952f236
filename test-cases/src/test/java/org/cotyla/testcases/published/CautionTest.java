package org.cotyla.testcases.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Map;
import org.cotyla.testcases.house.Answer;
import org.cotyla.testcases.house.DefectPicture;
import org.cotyla.testcases.house.House;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("Nerve, vessels, metal and time: the cautions that published figures ask for")
class CautionTest {

  private static final OrdinaryCase PLAIN = OrdinaryCase.planned();

  @ParameterizedTest(name = "{0} mm: {1}")
  @CsvSource({"40, false", "41, true", "40.1, true"})
  @DisplayName("Lengthening past 4 cm warns of the sciatic nerve; it does not forbid")
  @LeansOn(
      value = {"NERVE-HASIJA-2018", "NERVE-DEFINE-2017", "ISTA2014-040"},
      known = Known.FOUND)
  void nerve(BigDecimal lengthening, boolean warned) {
    Answer answer = PLAIN.with("leg lengthening planned", lengthening).answer();
    assertThat(answer.rows().contains("CA-29")).isEqualTo(warned);
    assertThat(answer.construct()).isEqualTo("hemispherical cup");
  }

  @ParameterizedTest(name = "cobalt {0}: {1}")
  @CsvSource({"7, false", "7.1, true"})
  @DisplayName("Cobalt above 7 asks for images of the soft tissues and a look at the abductors")
  @LeansOn(
      value = {"MOM-BILAT-2016", "MOM-META-2016"},
      known = Known.FOUND)
  void metalIons(BigDecimal cobalt, boolean warned) {
    Answer answer = PLAIN.with(Map.of("metal bearing", true, "cobalt", cobalt)).answer();
    assertThat(answer.rows().contains("CA-07")).isEqualTo(warned);
  }

  @Test
  @DisplayName("With a metal bearing the cells are counted by hand, whatever the ions")
  @LeansOn(value = "ICM-2018", known = Known.FOUND)
  void metalBearing() {
    Answer answer = PLAIN.with(Map.of("metal bearing", true, "cobalt", 1)).answer();
    assertThat(answer.rows()).contains("CA-06", "WU-16");
    assertThat(PLAIN.answer().rows()).doesNotContain("CA-06", "WU-16");
  }

  @ParameterizedTest(name = "{0} in class {1}")
  @CsvSource({
    "cup, CLASS_1",
    "cup, CLASS_2C",
    "cup, CLASS_3B",
    "cement, CLASS_1",
    "cement, CLASS_2C",
    "screw, CLASS_2A",
    "screw, CLASS_3B"
  })
  @DisplayName("Anything inside the pelvis asks for the vessels to be shown, in every class")
  @LeansOn(
      value = {"INTRAPELVIC-2012", "INTRAPELVIC-CHIBA-2020"},
      known = Known.FOUND)
  void insideThePelvis(String what, DefectPicture picture) {
    Answer answer = picture.planned().with("intrapelvic hardware", what).answer();
    assertThat(answer.rows()).contains("WU-05");
    assertThat(answer.rows()).containsAnyOf("CA-09", "CA-10").containsAnyOf("PE-01", "PE-02");
    assertThat(picture.planned().answer().rows()).doesNotContain("WU-05", "CA-09", "CA-10");
  }

  @ParameterizedTest
  @EnumSource
  @DisplayName("A cup inside the pelvis is reached from within, with blood and a vascular surgeon")
  @LeansOn(
      value = {"INTRAPELVIC-2012", "INTRAPELVIC-CRISTEA"},
      known = Known.FOUND)
  void cupInsideThePelvis(DefectPicture picture) {
    Answer answer = picture.planned().with("intrapelvic hardware", "cup").answer();
    assertThat(answer.value("exposure")).isEqualTo("posterior with pelvic approach");
    assertThat(answer.rows()).contains("KT-31", "PE-01", "CO-32", "RM-08");
  }

  @ParameterizedTest(name = "{0} days: cautioned {1}")
  @CsvSource({"55, true", "56, false"})
  @DisplayName("A custom device that cannot be there by the date is said")
  @LeansOn(value = "MEMORY-CUSTOM-LEAD", known = Known.FROM_MEMORY)
  void customLeadTime(int days, boolean cautioned) {
    Answer answer =
        DefectPicture.CLASS_3B
            .planned()
            .with(Map.of("column fracture line", "both columns", "break onset", "long standing"))
            .with("days until operation", days)
            .answer();
    assertThat(answer.construct()).isEqualTo("custom triflange");
    assertThat(answer.rows().contains("CA-14")).isEqualTo(cautioned);
  }

  @Test
  @DisplayName("Within three months of an operation the limits for chronic infection are in doubt")
  @LeansOn(value = "PJI-ACUTE-2020", known = Known.FOUND)
  void acuteLimits() {
    assertThat(PLAIN.with("years since last operation", new BigDecimal("0.2")).answer().rows())
        .contains("CA-05");
    assertThat(PLAIN.with("years since last operation", new BigDecimal("0.25")).answer().rows())
        .doesNotContain("CA-05");
  }

  @Test
  @DisplayName("Every answer carries the caution that it is support and not a decision")
  @LeansOn(value = "HOUSE", known = Known.HOUSE_CHOICE)
  void standingCaution() {
    assertThat(PLAIN.answer().recommendation().caution())
        .contains("Decision support")
        .contains("Local protocol and judgement come first")
        .isEqualTo(House.engine().protocol().about().caution());
  }
}
