package org.cotyla.testcases.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Map;
import org.cotyla.testcases.house.Answer;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The planned cup: three definitions of its angles, safe zone, jump distance, motion")
class PlannedCupTest {

  /** The protocol gives one decimal. */
  private static final double ROUNDED = 0.051;

  private static OrdinaryCase cup(String definition, Object inclination, Object anteversion) {
    return OrdinaryCase.planned()
        .with(
            Map.of(
                "planned angles", definition,
                "planned inclination", inclination,
                "planned anteversion", anteversion,
                "head centre offset", 0));
  }

  private static double number(Answer answer, String field) {
    return Double.parseDouble(answer.value(field));
  }

  @ParameterizedTest(name = "{0}: {1} {2} / {3}")
  @CsvSource({
    "M-1, radiographic, 40, 15, 42.2735, 22.6291, 40, 15, 38.3808, 19.2790",
    "M-2, radiographic, 40, 20, 43.9582, 29.5202, 40, 20, 37.1586, 25.4138",
    "M-3, operative, 40, 20, 43.9582, 22.1760, 41.7633, 15.1889, 40, 20",
    "M-4, operative, 45, 25, 50.1443, 22.9098, 47.8137, 17.3877, 45, 25",
    "M-5, anatomic, 45, 15, 45, 15, 44.0070, 10.5453, 43.0795, 14.5108",
    "M-6, anatomic, 45, 20, 45, 20, 43.2192, 13.9954, 41.6411, 18.8817",
    "M-7, anatomic, 60, 30, 60, 30, 56.3099, 25.6589, 48.5904, 40.8934"
  })
  @DisplayName("Radiographic, operative and anatomic angles are converted into each other")
  @LeansOn(value = "MURRAY-1993", known = Known.DERIVED)
  void conversions(
      String name,
      String definition,
      int inclination,
      int anteversion,
      double anatomicInclination,
      double anatomicAnteversion,
      double radiographicInclination,
      double radiographicAnteversion,
      double operativeInclination,
      double operativeAnteversion) {
    Answer answer = cup(definition, inclination, anteversion).answer();
    Map<String, Double> expected =
        Map.of(
            "planned anatomic inclination", anatomicInclination,
            "planned anatomic anteversion", anatomicAnteversion,
            "planned radiographic inclination", radiographicInclination,
            "planned radiographic anteversion", radiographicAnteversion,
            "planned operative inclination", operativeInclination,
            "planned operative anteversion", operativeAnteversion);
    expected.forEach(
        (field, value) ->
            assertThat(number(answer, field))
                .as(name + " " + field)
                .isCloseTo(value, within(ROUNDED)));
  }

  @ParameterizedTest(name = "{0} / {1}: inside {2}")
  @CsvSource({
    "30, 5, true",
    "29.9, 15, false",
    "50, 25, true",
    "50.1, 15, false",
    "40, 4.9, false",
    "40, 25.1, false"
  })
  @DisplayName("The classic zone is 40 and 15 degrees, 10 to either side, its edge inside")
  @LeansOn(value = "ABDEL-2016", known = Known.FOUND)
  void classicZone(BigDecimal inclination, BigDecimal anteversion, boolean inside) {
    Answer answer = cup("radiographic", inclination, anteversion).answer();
    assertThat(answer.calculation("distance to safe zone").equals("0")).isEqualTo(inside);
    assertThat(answer.rows().contains("OA-09")).isEqualTo(inside);
  }

  @ParameterizedTest(name = "cup {0}, stem {1}: {2} off 37, combined {3}")
  @CsvSource({"25, 20, 2, 45", "15, 30, -1, 45", "25, 10, -5, 35"})
  @DisplayName("Cup and stem: 25 to 50 together, and cup plus 0.7 of the stem is 37")
  @LeansOn(value = "WIDMER-2004", known = Known.FROM_MEMORY)
  @LeansOn(value = "COMB-AV-PMC5539744", known = Known.FOUND)
  void cupAndStem(int cup, int stem, BigDecimal off, BigDecimal combined) {
    Answer answer = stem(cup("radiographic", 40, cup), stem).answer();
    assertThat(new BigDecimal(answer.calculation("weighted anteversion error")))
        .isEqualByComparingTo(off);
    assertThat(new BigDecimal(answer.calculation("combined anteversion")))
        .isEqualByComparingTo(combined);
    assertThat(answer.rows()).contains("OA-18");
  }

  private static OrdinaryCase stem(OrdinaryCase cup, int anteversion) {
    return cup.with(
        Map.of(
            "stem geometry known",
            true,
            "stem anteversion",
            anteversion,
            "neck shaft angle",
            135,
            "neck diameter",
            12));
  }

  @ParameterizedTest(name = "head {0}, offset {1}: {2} mm")
  @CsvSource({
    "22, 0, 8.4190",
    "28, 0, 10.7151",
    "32, 0, 12.2459",
    "36, 0, 13.7766",
    "40, 0, 15.3073"
  })
  @DisplayName("Jump distance grows with the head: at 45 degrees of radiographic inclination")
  @LeansOn(value = "SARIALI-2009", known = Known.DERIVED)
  void jumpDistance(int head, int offset, double expected) {
    Answer answer =
        cup("radiographic", 45, 15)
            .with("planned head diameter", head)
            .with("head centre offset", offset)
            .answer();
    assertThat(number(answer, "planned jump distance")).isCloseTo(expected, within(ROUNDED));
  }

  @ParameterizedTest(name = "offset {0}: {1} mm")
  @CsvSource({"0, 12.5016", "1, 11.57", "2, 10.63", "3, 9.67", "-1, 13.42"})
  @DisplayName("A 32 mm head loses about 0.9 mm for each millimetre that it stands out")
  @LeansOn(value = "SARIALI-2009", known = Known.DERIVED)
  void headCentre(int offset, double expected) {
    Answer answer =
        cup("anatomic", 45, 15)
            .with("planned head diameter", 32)
            .with("head centre offset", offset)
            .answer();
    assertThat(number(answer, "planned jump distance")).isCloseTo(expected, within(ROUNDED));
  }

  @ParameterizedTest(name = "{0} / {1}, head {2}, neck {3}")
  @CsvSource({
    "40, 15, 28, 14, 116.2, 48.6, 27.4, 55.2, 120",
    "40, 15, 32, 12, 128.7, 61.1, 38.7, 70.5, 135.95",
    "40, 15, 36, 12, 132.9, 65.3, 42.3, 75.9, 141.06",
    "40, 20, 36, 12, 137.7, 57.9, 47.1, 66.5, 141.06",
    "45, 25, 36, 12, 148.6, 52.8, 56.9, 54.3, 141.06",
    "45, 25, 28, 14, 131.5, 35.7, 41.7, 36.7, 120"
  })
  @DisplayName("Motion until the neck meets the rim, with 15 degrees of stem version")
  @LeansOn(value = "YOSHIMINE-2005", known = Known.DERIVED)
  void motion(
      int inclination,
      int anteversion,
      int head,
      int neck,
      double flexion,
      double extension,
      double internal,
      double external,
      double oscillation) {
    Answer answer =
        stem(cup("radiographic", inclination, anteversion), 15)
            .with(Map.of("planned head diameter", head, "neck diameter", neck))
            .answer();
    assertThat(number(answer, "planned flexion")).isCloseTo(flexion, within(0.11));
    assertThat(number(answer, "planned extension")).isCloseTo(extension, within(0.11));
    assertThat(number(answer, "planned internal rotation")).isCloseTo(internal, within(0.11));
    assertThat(number(answer, "planned external rotation")).isCloseTo(external, within(0.11));
    assertThat(number(answer, "planned oscillation angle")).isCloseTo(oscillation, within(ROUNDED));
  }
}
