package org.cotyla.unit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Print symbols and names are those of UCUM's definitions. */
@DisplayName("Amounts for people to read")
class UnitWordsTest {

  @ParameterizedTest(name = "{0} in {1} is {2}")
  @CsvSource({
    "40, deg, 40°",
    "from 20 to 25, deg, from 20 to 25°",
    "1, rad, 1 rad",
    "34, mm, 34 mm",
    "35, %, 35 %",
    "24, mg/L, 24 mg/L",
    "5, ug/L, 5 μg/L",
    "30, mm/h, 30 mm/h",
    "3000, /uL, 3000 /μL",
    "3, 10*3/uL, 3 10³/μL",
    "9.81, m/s2, 9.81 m/s²",
    "37, Cel, 37 °C",
    "120, mm[Hg], 120 mm Hg",
    "2, [ppb], 2 ppb"
  })
  @DisplayName("have the print symbol of the unit")
  void symbols(String amount, String code, String words) {
    assertThat(UnitWords.of(amount, code)).isEqualTo(words);
  }

  @ParameterizedTest(name = "{0} in {1} is {2}")
  @CsvSource({
    "1, a, 1 year",
    "70, a, 70 years",
    "0, d, 0 days",
    "3.5, mo, 3.5 months",
    "6, wk, 6 weeks",
    "90, min, 90 minutes",
    "10, s, 10 s"
  })
  @DisplayName("name the units of the calendar and the clock")
  void names(String amount, String code, String words) {
    assertThat(UnitWords.of(amount, code)).isEqualTo(words);
  }

  @ParameterizedTest(name = "{0} in {1} is {2}")
  @CsvSource({"7, '', 7", "0.4, 1, 0.4", "3, furlongs, 3 furlongs", "2, mg{total}, 2 mg{total}"})
  @DisplayName("stay as they are where there is no unit or nothing is known of it")
  void others(String amount, String code, String words) {
    assertThat(UnitWords.of(amount, code)).isEqualTo(words);
  }
}
