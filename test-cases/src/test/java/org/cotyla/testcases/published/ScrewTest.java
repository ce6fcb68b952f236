package org.cotyla.testcases.published;

import static org.assertj.core.api.Assertions.assertThat;

import org.cotyla.testcases.house.Answer;
import org.cotyla.testcases.house.DefectPicture;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Screws: how many, where, and where not")
class ScrewTest {

  @Test
  @DisplayName("At least two in a plain revision cup")
  @LeansOn(value = "PERIPH-SCREW-2006", known = Known.FOUND)
  void atLeastTwo() {
    assertThat(OrdinaryCase.planned().answer().value("least screws")).isEqualTo("2");
  }

  @Test
  @DisplayName("At least three in irradiated bone")
  @LeansOn(value = "RADIO-WELLINGS-2020", known = Known.FOUND)
  void irradiated() {
    Answer answer = DefectPicture.CLASS_3A.planned().with("pelvic irradiation", true).answer();
    assertThat(Integer.parseInt(answer.value("least screws"))).isGreaterThanOrEqualTo(3);
  }

  @Test
  @DisplayName("A trial that rocks: screws are mandatory, and more of them")
  @LeansOn(value = "TABATA-2015", known = Known.FOUND)
  void withoutPressFit() {
    OrdinaryCase inTheatre = OrdinaryCase.planned().inTheatre();
    Answer rocks = inTheatre.with("trial cup", "rocks").answer();
    assertThat(rocks.value("least screws")).isEqualTo("3");
    assertThat(rocks.rows()).contains("SC-09");
    assertThat(inTheatre.with("trial cup", "holds").answer().rows()).doesNotContain("SC-09");
  }

  @Test
  @DisplayName("First into the posterior-superior quadrant, never into an anterior one")
  @LeansOn(
      value = {"QUADRANT-TEACH", "KEATING-1990"},
      known = Known.FOUND)
  @LeansOn(value = "WASIELEWSKI-1990", known = Known.FROM_MEMORY)
  void quadrants() {
    assertThat(OrdinaryCase.planned().answer().list("Screws"))
        .anyMatch(advice -> advice.startsWith("Screws first into the posterior-superior quadrant"))
        .anyMatch(advice -> advice.contains("short of 20 mm"))
        .anyMatch(advice -> advice.startsWith("No screw into either anterior quadrant"));
  }

  @ParameterizedTest(name = "rise {0} mm of a native 48: {1}")
  @CsvSource({"23, SC-01, SC-04", "24, SC-04, SC-01"})
  @DisplayName("From a rise of half the native diameter on the quadrants no longer hold")
  @LeansOn(
      value = {"WHEELESS-HHC", "QUADRANT-TEACH"},
      known = Known.FOUND)
  void highHipCentre(int rise, String said, String unsaid) {
    Answer answer = OrdinaryCase.planned().with("planned centre rise", rise).answer();
    assertThat(answer.rows()).contains(said).doesNotContain(unsaid);
  }

  @Test
  @DisplayName("A custom device has at least one screw in the ischium")
  @LeansOn(value = "ISCHIAL-2022", known = Known.FOUND)
  void ischialScrew() {
    Answer answer =
        DefectPicture.CLASS_3B
            .planned()
            .with("column fracture line", "both columns")
            .with("break onset", "long standing")
            .answer();
    assertThat(answer.construct()).isEqualTo("custom triflange");
    assertThat(answer.rows()).contains("SC-07", "CA-15", "TB-16");
  }
}
