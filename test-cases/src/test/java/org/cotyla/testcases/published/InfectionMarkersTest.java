package org.cotyla.testcases.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Map;
import org.cotyla.finding.Given;
import org.cotyla.testcases.house.Answer;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;
import org.cotyla.value.Value;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Each marker of the infection score counts above its limit, and once in its group")
class InfectionMarkersTest {

  private static final String SCORE = "preoperative infection score";
  private static final OrdinaryCase PLAIN = OrdinaryCase.planned();

  @ParameterizedTest(name = "{0} {1}: {2} points; {3}: {4} points")
  @CsvSource({
    "crp, 10, 0, 10.1, 2",
    "esr, 30, 0, 30.5, 1",
    "synovial white cells, 3000, 0, 3001, 3",
  })
  @DisplayName("On the limit nothing counts, above it the points do")
  @LeansOn(value = "ICM-2018", known = Known.FOUND)
  void limits(String marker, BigDecimal on, String none, BigDecimal above, String points) {
    assertThat(PLAIN.with(marker, on).answer().value(SCORE)).isEqualTo(none);
    assertThat(PLAIN.with(marker, above).answer().value(SCORE)).isEqualTo(points);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"860, 0", "861, 2"})
  @DisplayName("D-dimer counts above 860")
  @LeansOn(value = "ICM-2018", known = Known.FOUND)
  void dDimer(int value, String points) {
    OrdinaryCase measured = PLAIN.with(Map.of("d dimer measured", true, "d dimer", value));
    assertThat(measured.answer().value(SCORE)).isEqualTo(points);
  }

  @ParameterizedTest(name = "{0} {1}: {2} points")
  @CsvSource({"synovial neutrophils, 80, 0", "synovial neutrophils, 81, 2"})
  @DisplayName("As first published neutrophils count above 80 %")
  @LeansOn(value = "MEMORY-INFECTION-SCORE", known = Known.FROM_MEMORY)
  void neutrophils(String marker, int value, String points) {
    assertThat(PLAIN.with(marker, value).answer().value(SCORE)).isEqualTo(points);
  }

  @ParameterizedTest(name = "{0}: {1} points")
  @CsvSource({"6.9, 0", "7, 1"})
  @DisplayName("As first published CRP in the joint fluid counts above 6.9 mg/L")
  @LeansOn(value = "MEMORY-INFECTION-SCORE", known = Known.FROM_MEMORY)
  void synovialCrp(BigDecimal value, String points) {
    OrdinaryCase measured =
        PLAIN.with(Map.of("synovial crp measured", true, "synovial crp", value));
    assertThat(measured.answer().value(SCORE)).isEqualTo(points);
  }

  @ParameterizedTest(name = "{0} cells, esterase {1}: {2} points")
  @CsvSource({
    "5000, negative, 3",
    "500, two plus, 3",
    "5000, two plus, 3",
    "500, one plus, 0",
    "500, not done, 0"
  })
  @DisplayName("Cells and esterase are one group of three points; only two plus counts")
  @LeansOn(
      value = {"PARVIZI-2018", "ICM-2018"},
      known = Known.FOUND)
  void cellsOrEsterase(int cells, String esterase, String points) {
    OrdinaryCase tapped =
        PLAIN.with(Map.of("synovial white cells", cells, "leukocyte esterase", esterase));
    assertThat(tapped.answer().value(SCORE)).isEqualTo(points);
  }

  @ParameterizedTest(name = "{0} is {1} mg/L: {2} points")
  @CsvSource({"2.4 mg/dL, 24, 2", "1 mg/dL, 10, 0", "1.1 mg/dL, 11, 2", "0.4 mg/dL, 4, 0"})
  @DisplayName("I-10: CRP in mg/dL is converted before it is held against the limit")
  @LeansOn(value = "ICM-2018", known = Known.DERIVED)
  void crpInOtherUnits(String crp, BigDecimal expected, String points) {
    Answer answer = PLAIN.with("crp", Given.of(crp)).answer();
    assertThat(answer.recommendation().findings().datum("crp").orElseThrow().value().single())
        .hasValue(Value.of(expected));
    assertThat(answer.value(SCORE)).isEqualTo(points);
  }

  @ParameterizedTest(name = "{0}: {1} points")
  @CsvSource({"900 ng/mL, 2", "0.9 mg/L, 2", "0.8 mg/L, 0"})
  @DisplayName("D-dimer is converted too: ng/mL is the same number as ug/L")
  @LeansOn(value = "ICM-2018", known = Known.DERIVED)
  void dDimerInOtherUnits(String dDimer, String points) {
    OrdinaryCase measured =
        PLAIN.with(Map.of("d dimer measured", true, "d dimer", Given.of(dDimer)));
    assertThat(measured.answer().value(SCORE)).isEqualTo(points);
  }

  @Test
  @DisplayName("Two cultures with one organism are proof by themselves; a single one is not")
  @LeansOn(
      value = {"PARVIZI-2018", "ICM-2018"},
      known = Known.FOUND)
  void cultures() {
    assertThat(status(PLAIN.with("culture results", "two of one organism"))).isEqualTo("infected");
    assertThat(status(PLAIN.with("culture results", "one positive"))).isEqualTo("inconclusive");
  }

  @Test
  @DisplayName("Pus gives three points, but not where metal debris explains it")
  @LeansOn(value = "ICM-2018", known = Known.FOUND)
  void purulence() {
    OrdinaryCase inTheatre = PLAIN.inTheatre();
    assertThat(inTheatre.with("purulence", "present").answer().value("theatre infection score"))
        .isEqualTo("3");
    OrdinaryCase debris = inTheatre.with("purulence", "explained by metal debris");
    assertThat(debris.answer().value("theatre infection score")).isEqualTo("0");
  }

  @Test
  @DisplayName("Raised markers without an aspiration are not worked up: the tap comes first")
  @LeansOn(value = "PARVIZI-2018", known = Known.FOUND)
  void notWorkedUp() {
    Answer answer =
        PLAIN
            .with("crp", 24)
            .with("joint aspiration", "not done")
            .without("synovial white cells")
            .without("synovial neutrophils")
            .answer();
    assertThat(answer.value("infection status")).isEqualTo("not worked up");
    assertThat(answer.list("Work-up that decides the plan").get(0)).startsWith("Aspirate");
  }

  @Test
  @DisplayName("A confirmed infection stops every new socket: staged revision and nothing else")
  @LeansOn(value = "PARVIZI-2018", known = Known.DERIVED)
  void infectionGate() {
    Answer answer = PLAIN.with("sinus tract", true).answer();
    assertThat(answer.construct()).isEqualTo("staged revision");
    assertThat(answer.result("construct").inPlay()).hasSize(1);
    assertThat(answer.rows()).contains("CA-01");
  }

  private static String status(OrdinaryCase given) {
    return given.answer().value("infection status");
  }
}
