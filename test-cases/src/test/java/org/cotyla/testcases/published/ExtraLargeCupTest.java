package org.cotyla.testcases.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.cotyla.testcases.house.Answer;
import org.cotyla.testcases.house.DefectPicture;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("When a cup is extra-large, and what follows")
class ExtraLargeCupTest {

  private static final OrdinaryCase ROOMY =
      DefectPicture.CLASS_2A
          .planned()
          .with(Map.of("ap dimension", 64, "vertical dimension", 66, "native diameter", 56));

  private static OrdinaryCase cup(String sex, int diameter) {
    return ROOMY.with(Map.of("sex", sex, "planned cup diameter", diameter));
  }

  @ParameterizedTest(name = "{0} {1} mm: {2}")
  @CsvSource({
    "female, 61, no",
    "female, 62, yes",
    "male, 64, no",
    "male, 65, no",
    "male, 66, yes",
    "male, 62, no"
  })
  @DisplayName("From 62 mm in a woman and from 66 mm in a man")
  @LeansOn(value = "JUMBO-CCJR-2016", known = Known.FOUND)
  @LeansOn(value = "WHALEY-2001", known = Known.FROM_MEMORY)
  void bySex(String sex, int diameter, String expected) {
    assertThat(cup(sex, diameter).answer().value("extra large cup planned")).isEqualTo(expected);
  }

  @ParameterizedTest(name = "{0} {1} mm leads to: {2}")
  @CsvSource({
    "female, 61, hemispherical cup",
    "female, 62, extra-large cup",
    "male, 65, hemispherical cup",
    "male, 66, extra-large cup"
  })
  @DisplayName("On whole bone the template decides which of the two hemispheres leads")
  @LeansOn(value = "JUMBO-CCJR-2016", known = Known.DERIVED)
  void leads(String sex, int diameter, String expected) {
    assertThat(cup(sex, diameter).answer().construct()).isEqualTo(expected);
  }

  @Test
  @DisplayName("Native 50 and cup 60: extra-large for this patient, though not by sex; both said")
  @LeansOn(value = "MEMORY-ALGORITHM", known = Known.FROM_MEMORY)
  @LeansOn(value = "JUMBO-CCJR-2016", known = Known.FOUND)
  void relativeDefinition() {
    Answer relative = cup("female", 60).with("native diameter", 50).answer();
    assertThat(relative.value("extra large cup planned")).isEqualTo("no");
    assertThat(relative.rows()).contains("SZ-07").doesNotContain("SZ-06");
    Answer below = cup("female", 60).with("native diameter", 51).answer();
    assertThat(below.rows()).doesNotContain("SZ-07");
  }

  @Test
  @DisplayName(
      "From 52 to 66 mm the centre rises by 7 mm if the lower edge stays: less than measured")
  @LeansOn(
      value = {"NWANKWO-2014", "JUMBO-COR-2021"},
      known = Known.DERIVED)
  void centreRise() {
    Answer answer = cup("male", 66).with("native diameter", 52).answer();
    assertThat(answer.calculation("estimated centre rise")).isEqualTo("7");
    assertThat(answer.list("Cautions on the plan"))
        .anyMatch(
            caution -> caution.contains("expect the hip centre to rise by about a centimetre"));
  }

  @Test
  @DisplayName("The front-to-back dimension limits it: beyond it the extra-large cup is ruled out")
  @LeansOn(value = "DELGAIZO-2012", known = Known.FOUND)
  void frontToBack() {
    OrdinaryCase narrow = cup("female", 62).with("vertical dimension", 62);
    assertThat(narrow.with("ap dimension", 58).answer().constructIsRuledOut("extra-large cup"))
        .isFalse();
    assertThat(narrow.with("ap dimension", 57).answer().constructIsRuledOut("extra-large cup"))
        .isTrue();
  }

  @Test
  @DisplayName("In 3A it is for a near-spherical cavity; an oblong one speaks against it")
  @LeansOn(
      value = {"DELGAIZO-2012", "JUMBO-CCJR-2016"},
      known = Known.FOUND)
  void cavityShape() {
    OrdinaryCase severe = DefectPicture.CLASS_3A.planned();
    Answer spherical = severe.with("cavity shape", "spherical").answer();
    Answer oblong = severe.with("cavity shape", "oblong").answer();
    assertThat(spherical.constructPoints("extra-large cup"))
        .isGreaterThan(oblong.constructPoints("extra-large cup"));
  }
}
