package org.cotyla.testcases.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Stream;
import org.cotyla.testcases.house.Answer;
import org.cotyla.testcases.house.DefectPicture;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("A parted pelvis: its signs, whether it can heal, and what it asks for")
class DiscontinuityTest {

  private static final OrdinaryCase PLAIN = OrdinaryCase.planned();
  private static final Map<String, Object> RECENT =
      Map.of(
          "column fracture line", "both columns",
          "break onset", "recent",
          "reason for revision", "fracture",
          "days until operation", 2);
  private static final Map<String, Object> OLD =
      Map.of("column fracture line", "both columns", "break onset", "long standing");

  static Stream<Map.Entry<String, Object>> signs() {
    return Stream.of(
        Map.entry("ilioischial step", true),
        Map.entry("obturator foramina", "unequal"),
        Map.entry("column fracture line", "posterior column"),
        Map.entry("column fracture line", "anterior column"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("signs")
  @DisplayName("Any one sign raises the suspicion, asks for CT and for a stress test in theatre")
  @LeansOn(value = "MEMORY-DISCONTINUITY-SIGNS", known = Known.FROM_MEMORY)
  void anyOneSign(Map.Entry<String, Object> sign) {
    Answer answer =
        PLAIN
            .with(sign.getKey(), sign.getValue())
            .with("ct scan", false)
            .without("ct age")
            .answer();
    assertThat(answer.value("discontinuity")).isEqualTo("suspected");
    assertThat(answer.rows()).contains("WU-07", "CA-08");
  }

  @Test
  @DisplayName("A line through both columns is a discontinuity")
  @LeansOn(value = "MEMORY-DISCONTINUITY-SIGNS", known = Known.FROM_MEMORY)
  void bothColumns() {
    Answer answer = PLAIN.with("column fracture line", "both columns").answer();
    assertThat(answer.value("discontinuity")).isEqualTo("present");
  }

  @Test
  @DisplayName("Clean films never clear a 3B hip; the stress test in theatre does")
  @LeansOn(value = "MEMORY-DISCONTINUITY-SIGNS", known = Known.FROM_MEMORY)
  void stressTestIsFinal() {
    OrdinaryCase severe = DefectPicture.CLASS_3B.planned();
    assertThat(severe.answer().value("discontinuity")).isEqualTo("suspected");
    OrdinaryCase inTheatre = severe.inTheatre();
    assertThat(inTheatre.answer().value("discontinuity")).isEqualTo("none");
    Answer moves = inTheatre.with("ischium on stress", "moves").answer();
    assertThat(moves.value("discontinuity")).isEqualTo("present");
    assertThat(moves.constructIsRuledOut("hemispherical cup")).isTrue();
  }

  @Test
  @DisplayName("Acute with modest loss: plate on the posterior column and a cup; no distraction")
  @LeansOn(value = "ABDEL-2017", known = Known.FOUND)
  void acute() {
    Answer answer = DefectPicture.CLASS_2A.planned().with(RECENT).answer();
    assertThat(answer.value("discontinuity type")).isEqualTo("acute");
    assertThat(answer.construct()).isEqualTo("column plate with cup");
    assertThat(answer.constructIsRuledOut("distraction with cup and augments")).isTrue();
  }

  @ParameterizedTest(name = "class {0}")
  @CsvSource({"CLASS_2B", "CLASS_3A", "CLASS_3B"})
  @DisplayName("Chronic: spanned or distracted, never plated and never a plain cup")
  @LeansOn(
      value = {"ABDEL-2017", "HASENAUER-2018"},
      known = Known.FOUND)
  void chronic(DefectPicture picture) {
    Answer answer = picture.planned().with(OLD).answer();
    assertThat(answer.value("discontinuity type")).isEqualTo("chronic");
    assertThat(answer.constructIsRuledOut("column plate with cup")).isTrue();
    assertThat(answer.constructIsRuledOut("hemispherical cup")).isTrue();
    assertThat(answer.result("construct").inPlay().stream().map(o -> o.name()))
        .contains("custom triflange", "cup-cage", "distraction with cup and augments");
  }

  @Test
  @DisplayName("Irradiated and parted: treated as chronic, by triflange or cup-cage")
  @LeansOn(value = "MEMORY-ALGORITHM", known = Known.FROM_MEMORY)
  void irradiated() {
    OrdinaryCase irradiated = PLAIN.with(RECENT).with("pelvic irradiation", true);
    Answer answer = irradiated.answer();
    assertThat(answer.value("discontinuity type")).isEqualTo("chronic");
    assertThat(answer.construct()).isIn("custom triflange", "cup-cage");
    assertThat(answer.constructIsRuledOut("column plate with cup")).isTrue();
  }

  @Test
  @DisplayName("Inflammatory arthritis with severe loss warns of a discontinuity")
  @LeansOn(value = "PD-CHAPTER", known = Known.FOUND)
  void riskFactors() {
    OrdinaryCase severe = DefectPicture.CLASS_3A.planned();
    assertThat(severe.with("inflammatory arthritis", true).answer().rows()).contains("CA-30");
    assertThat(severe.answer().rows()).doesNotContain("CA-30");
  }
}
