package org.cotyla.testcases.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.testcases.trade.Population.everyone;
import static org.cotyla.testcases.trade.Population.proves;

import java.math.BigDecimal;
import java.util.function.Predicate;
import org.cotyla.testcases.house.DefectPicture;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The way in")
class ApproachRulesTest {

  @Test
  @DisplayName("The earlier anterior approach is reused only for an early or a badly placed cup")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void anteriorAgain() {
    Predicate<Outcome> again = o -> o.is("exposure", "earlier anterior again");
    Predicate<Outcome> early = o -> o.findings().number("years since last operation") < 1;
    proves(
        everyone(again),
        20,
        o ->
            o.states("earlier approach", "anterior")
                && (early.test(o) || o.states("cup position", "badly placed")));
    proves(everyone(again), 20, o -> o.isClass("1", "2A", "2B") && o.is("discontinuity", "none"));
  }

  @ParameterizedTest(name = "{0} years, {1}: {2}")
  @CsvSource({
    "0.9, well placed, earlier anterior again",
    "1, well placed, extensile posterior",
    "9, badly placed, earlier anterior again",
    "9, well placed, extensile posterior"
  })
  @DisplayName("Otherwise the way in is an extensile posterior one")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void otherwisePosterior(BigDecimal years, String position, String expected) {
    OrdinaryCase anterior =
        DefectPicture.CLASS_2A
            .planned()
            .with("earlier approach", "anterior")
            .with("years since last operation", years)
            .with("cup position", position);
    assertThat(anterior.answer().value("exposure")).isEqualTo(expected);
  }

  @Test
  @DisplayName("Severe loss or a break is never reached from in front")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void severeLoss() {
    proves(
        everyone(o -> o.isClass("2C", "3A", "3B") || o.is("discontinuity", "present")),
        500,
        o ->
            o.values().get("exposure").startsWith("posterior")
                || o.is("exposure", "extensile posterior")
                || o.is("exposure", "through the ununited trochanter"));
  }

  @Test
  @DisplayName("From behind, the sciatic nerve is found before anything is cut")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void sciaticNerve() {
    proves(
        everyone(o -> o.values().get("exposure").contains("posterior")),
        1000,
        o -> o.rows().contains("ES-01"));
  }
}
