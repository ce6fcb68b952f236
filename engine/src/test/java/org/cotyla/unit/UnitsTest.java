package org.cotyla.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Factors are those of UCUM (the Unified Code for Units of Measure, version 2.1) and SI prefixes.
 */
@DisplayName("Units by their UCUM codes")
class UnitsTest {

  @ParameterizedTest(name = "{0} {1} is {2} {3}")
  @CsvSource({
    "3.4, cm, 34, mm",
    "34, mm, 3.4, cm",
    "2.4, mg/dL, 24, mg/L",
    "780999, mg/L, 78099.9, mg/dL",
    "53.2155, [in_i], 1351.6737, mm",
    "5, ug/L, 5, ng/mL",
    "119, nmol/L, 0.119, umol/L",
    "3.2, 10*3/uL, 3200, /uL",
    "18, mo, 1.5, a",
    "0.55, 1, 55, %",
    "12, mm, 12, mm"
  })
  @DisplayName("convert exactly where the factor is a decimal")
  void exact(BigDecimal quantity, String from, BigDecimal converted, String to) {
    assertThat(Units.convert(quantity, from, to))
        .hasValueSatisfying(value -> assertThat(value).isEqualByComparingTo(converted));
    assertThat(new UnitFactors().convert(quantity, from, to))
        .hasValueSatisfying(value -> assertThat(value).isEqualByComparingTo(converted));
  }

  @ParameterizedTest(name = "{0} to {1}")
  @CsvSource({"mm, mg/L", "mm, '', ", "furlongs, mm", "mm, MM", "Cel, K"})
  @DisplayName(
      "are not converted when they do not fit, are unknown, or differ by more than a factor")
  void refused(String from, String to) {
    assertThat(Units.convert(BigDecimal.ONE, from, to)).isEmpty();
    assertThat(new UnitFactors().convert(BigDecimal.ONE, from, to)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"mm", "mg/L", "%", "deg", "a", "/uL", "ng/mL", "[ppb]", "mm/h", "mm[Hg]"})
  @DisplayName("are known by the codes that laboratories and films use")
  void known(String code) {
    assertThat(Units.isKnown(code)).isTrue();
  }

  @Test
  @DisplayName("that are empty, misspelt or absurdly long are unknown")
  void unknown() {
    assertThat(Units.isKnown("")).isFalse();
    assertThat(Units.isKnown("milimeter")).isFalse();
    assertThat(Units.isKnown("m.".repeat(5000) + "m")).isFalse();
    assertThat(Units.isKnown("10*999999999/uL")).isFalse();
    assertThat(Units.isKnown("m999999999")).isFalse();
  }

  @Test
  @DisplayName("that many cases invent are answered all the same when no more are remembered")
  void manyUnits() {
    UnitFactors factors = new UnitFactors();
    for (int note = 1; note <= 600; note++) {
      factors.convert(BigDecimal.ONE, "mm{" + note + "}", "mm");
    }
    assertThat(factors.convert(new BigDecimal("3.2"), "10*3/uL", "/uL"))
        .hasValueSatisfying(value -> assertThat(value).isEqualByComparingTo("3200"));
  }
}
