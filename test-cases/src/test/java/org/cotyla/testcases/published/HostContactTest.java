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

@DisplayName("How much living bone a hemisphere needs")
class HostContactTest {

  private static final String HEMISPHERE = "hemispherical cup";

  private static OrdinaryCase contact(int percent) {
    return DefectPicture.CLASS_2A.planned().with("host bone contact", percent);
  }

  @ParameterizedTest(name = "{0} %: {1}")
  @CsvSource({"100, good", "50, good", "49, limited", "30, limited", "29, poor", "0, poor"})
  @DisplayName("Half is the floor for a conventional cup, 30 % the remembered one for porous metal")
  @LeansOn(value = "VILLANUEVA-2008", known = Known.FOUND)
  @LeansOn(value = "MEMORY-CONTACT-30", known = Known.FROM_MEMORY)
  void fixation(int percent, String expected) {
    assertThat(contact(percent).answer().value("host bone fixation")).isEqualTo(expected);
  }

  @ParameterizedTest(name = "{0} %, porous metal to hand: {1}; ruled out: {2}")
  @CsvSource({
    "50, false, false",
    "49, false, true",
    "49, true, false",
    "30, true, false",
    "30, false, true",
    "29, true, true"
  })
  @DisplayName("Below half only porous metal holds a plain cup, below 30 % none does")
  @LeansOn(
      value = {"VILLANUEVA-2008", "LAKSTEIN-2009"},
      known = Known.FOUND)
  @LeansOn(value = "MEMORY-CONTACT-30", known = Known.FROM_MEMORY)
  void plainCup(int percent, boolean porousMetal, boolean ruledOut) {
    Answer answer = contact(percent).with("porous metal to hand", porousMetal).answer();
    assertThat(answer.constructIsRuledOut(HEMISPHERE)).isEqualTo(ruledOut);
  }

  @Test
  @DisplayName("Severe, uncontained and below half: no plain cup, whatever the metal")
  @LeansOn(value = "DELGAIZO-2012", known = Known.FOUND)
  void severeAndUncontained() {
    OrdinaryCase open = DefectPicture.CLASS_3A.planned();
    assertThat(open.answer().constructIsRuledOut(HEMISPHERE)).isTrue();
    Answer contained = open.with(Map.of("defect contained", true, "rim loss", 1)).answer();
    assertThat(contained.constructIsRuledOut(HEMISPHERE)).isFalse();
  }

  @ParameterizedTest(name = "{0} %: cautioned {1}")
  @CsvSource({"50, false", "49, true", "31, true"})
  @DisplayName("A plain cup that leads on less than half carries the caution for it")
  @LeansOn(value = "LAKSTEIN-2009", known = Known.FOUND)
  void caution(int percent, boolean cautioned) {
    Answer answer = contact(percent).answer();
    assertThat(answer.construct()).isEqualTo(HEMISPHERE);
    assertThat(answer.rows().contains("CA-28")).isEqualTo(cautioned);
  }

  @Test
  @DisplayName("In theatre the trial cup on bleeding bone counts, not the estimate from the films")
  @LeansOn(value = "HOUSE", known = Known.HOUSE_CHOICE)
  void theatreCounts() {
    OrdinaryCase inTheatre = contact(70).inTheatre().with("host bone contact in theatre", 40);
    assertThat(inTheatre.answer().value("working host contact")).isEqualTo("40");
    assertThat(inTheatre.answer().value("host bone fixation")).isEqualTo("limited");
  }
}
