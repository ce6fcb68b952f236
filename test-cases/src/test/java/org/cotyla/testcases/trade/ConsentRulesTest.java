package org.cotyla.testcases.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.testcases.trade.Population.everyone;
import static org.cotyla.testcases.trade.Population.proves;

import java.util.List;
import org.cotyla.protocol.Row;
import org.cotyla.testcases.house.House;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Figures that the trade gives its patients, marked as what they are")
class ConsentRulesTest {

  private static Row row(String id) {
    return House.engine()
        .protocol()
        .allRows()
        .filter(row -> row.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "CO-05 | fewer than one in twenty revised for loosening at 5 to 12 years",
        "CO-22 | Impaction grafting in 3A: about 7 to 10 % revised at five years",
        "CO-35 | Cemented cups: more than a fifth loosened within ten years"
      })
  @DisplayName("A rule of thumb among them leans on common practice and on no publication")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void markedAsCommonPractice(String id, String sentence) {
    assertThat(row(id).results().get(0).text()).contains(sentence);
    assertThat(row(id).sources()).isEqualTo(List.of("COMMON-PRACTICE"));
  }

  @Test
  @DisplayName(
      "Dislocation up to about one in ten is told to every patient, with its published count")
  @LeansOn(value = "WETTERS-2013", known = Known.FOUND)
  void oneInTen() {
    proves(everyone(), 4000, o -> o.rows().contains("CO-01"));
    assertThat(row("CO-01").results().get(0).text()).contains("one in ten (113 of 1,152");
    assertThat(113 / 1152.0).isBetween(0.09, 0.1);
  }

  @Test
  @DisplayName("Whoever gets impaction grafting in 3A hears the five-year revision rate")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void impactionGrafting() {
    proves(
        everyone(o -> o.isClass("3A") && o.isLedBy("impaction grafting with cemented cup")),
        10,
        o -> o.rows().contains("CO-22"));
    proves(everyone(o -> !o.isClass("3A")), 1000, o -> !o.rows().contains("CO-22"));
  }

  @Test
  @DisplayName("Whoever has a cemented cup hears how often those loosened")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void cementedCups() {
    proves(
        everyone(o -> o.states("earlier cup", "cemented")), 300, o -> o.rows().contains("CO-35"));
  }

  @Test
  @DisplayName("Whoever gets an uncemented hemisphere hears how seldom those loosen")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void uncementedHemispheres() {
    proves(everyone(o -> o.isLedBy("hemispherical cup")), 1000, o -> o.rows().contains("CO-05"));
  }
}
