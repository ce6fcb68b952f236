package org.cotyla.testcases.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
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
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("The first construct by defect, as the published algorithms have it")
class LeadingConstructTest {

  @Test
  @DisplayName("Every published family of constructs can be recommended")
  @LeansOn(
      value = {"HASENAUER-2018", "ABDEL-2017", "JUMBO-CCJR-2016"},
      known = Known.FOUND)
  void everyFamily() {
    List<String> options =
        House.engine().protocol().ranking("construct").orElseThrow().options().stream()
            .map(option -> option.name())
            .toList();
    assertThat(options)
        .contains(
            "impaction grafting with cemented cup",
            "hemispherical cup",
            "extra-large cup",
            "structural allograft with cup",
            "cup with porous metal augments",
            "antiprotrusio cage with graft",
            "oblong cup",
            "cup-cage",
            "custom triflange",
            "distraction with cup and augments",
            "column plate with cup");
  }

  @ParameterizedTest
  @EnumSource(names = {"CLASS_1", "CLASS_2A", "CLASS_2B"})
  @DisplayName("Most of type 1 and 2: a standard uncemented hemisphere")
  @LeansOn(value = "JUMBO-CCJR-2016", known = Known.FOUND)
  void standardHemisphere(DefectPicture picture) {
    assertThat(picture.planned().answer().construct()).isEqualTo("hemispherical cup");
  }

  @Test
  @DisplayName("2C: a hemisphere on the whole rim, over medial graft that carries nothing")
  @LeansOn(value = "GARCIAREY-2015", known = Known.FOUND)
  @LeansOn(value = "MEMORY-ALGORITHM", known = Known.FROM_MEMORY)
  void medialDefect() {
    Answer answer = DefectPicture.CLASS_2C.planned().answer();
    assertThat(answer.construct()).isEqualTo("hemispherical cup");
    assertThat(answer.rows()).contains("GR-04", "SC-10");
  }

  @Test
  @DisplayName("3A: a highly porous cup with a superior augment")
  @LeansOn(value = "DELGAIZO-2012", known = Known.FOUND)
  void upAndOut() {
    assertThat(DefectPicture.CLASS_3A.planned().answer().construct())
        .isEqualTo("cup with porous metal augments");
  }

  @Test
  @DisplayName("3B: porous metal with augments or a device to the ischium, never a cup alone")
  @LeansOn(
      value = {"TANT-41-2019", "GARCIAREY-2015"},
      known = Known.FOUND)
  void upAndIn() {
    Answer answer = DefectPicture.CLASS_3B.planned().answer();
    assertThat(answer.construct())
        .isIn("cup with porous metal augments", "cup-cage", "custom triflange");
    assertThat(answer.constructIsRuledOut("hemispherical cup")).isTrue();
    assertThat(answer.rows()).contains("SC-07");
  }

  @Test
  @DisplayName("Impaction grafting wants walls: a rim mesh speaks against it")
  @LeansOn(
      value = {"GARCIAREY-2015", "RIGBY-2011"},
      known = Known.FOUND)
  void impactionGrafting() {
    OrdinaryCase open = DefectPicture.CLASS_3A.planned();
    String grafting = "impaction grafting with cemented cup";
    assertThat(open.answer().constructPoints(grafting).signum()).isNegative();
    assertThat(open.with("defect contained", true).answer().constructPoints(grafting).signum())
        .isPositive();
  }

  @Test
  @DisplayName("Irradiated: no cement alone, no graft; cup-cage, or porous metal with three screws")
  @LeansOn(
      value = {"RADIO-REVIEW-2022", "RADIO-JOGLEKAR-2012", "RADIO-WELLINGS-2020"},
      known = Known.FOUND)
  void irradiated() {
    Answer answer = DefectPicture.CLASS_2B.planned().with("pelvic irradiation", true).answer();
    assertThat(answer.construct()).isIn("cup-cage", "cup with porous metal augments");
    assertThat(answer.constructIsRuledOut("impaction grafting with cemented cup")).isTrue();
    assertThat(answer.rows()).contains("SC-06", "CA-11", "GR-02");
  }

  @Test
  @DisplayName("Tumour: cage, screws and cement, after oncology; nothing that waits for ingrowth")
  @LeansOn(value = "METS-2015", known = Known.FOUND)
  void tumour() {
    Answer answer =
        DefectPicture.CLASS_2C
            .planned()
            .with(Map.of("pelvic metastasis", true, "life expectancy", 1))
            .answer();
    assertThat(answer.construct()).isEqualTo("antiprotrusio cage with graft");
    assertThat(answer.rows()).contains("CA-12", "WU-11", "PE-10");
  }

  @ParameterizedTest
  @EnumSource
  @DisplayName("Whatever leads, its figures for consent are there")
  @LeansOn(
      value = {"JAIN-2014", "WETTERS-2013"},
      known = Known.FOUND)
  void figures(DefectPicture picture) {
    Answer answer = picture.planned().answer();
    assertThat(answer.rows()).contains("CO-01", "CO-36");
    assertThat(answer.list("Figures for consent")).hasSizeGreaterThan(3);
  }
}
