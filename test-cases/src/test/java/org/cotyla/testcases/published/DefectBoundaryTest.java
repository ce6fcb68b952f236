package org.cotyla.testcases.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.testcases.house.DefectPicture.CLASS_2B;
import static org.cotyla.testcases.house.DefectPicture.CLASS_3A;

import java.math.BigDecimal;
import org.cotyla.finding.Given;
import org.cotyla.testcases.house.Answer;
import org.cotyla.testcases.house.DefectPicture;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Both sides of every limit of the defect criteria")
class DefectBoundaryTest {

  @ParameterizedTest(name = "{0} mm up and out: {1}")
  @CsvSource({"29, 2B", "29.9, 2B", "30, 2B", "30.1, 3A", "31, 3A"})
  @DisplayName("Migration is high above 3 cm; the source words it as more than 3 cm")
  @LeansOn(
      value = {"DELGAIZO-2012", "MDPI-2C-2026"},
      known = Known.FOUND)
  void migrationLine(BigDecimal migration, String expected) {
    OrdinaryCase upAndOut = CLASS_2B.planned().with("hip centre migration", migration);
    assertThat(upAndOut.answer().value("defect class")).isEqualTo(expected);
  }

  @ParameterizedTest(name = "{0} is {1}")
  @CsvSource({"3 cm, 2B", "3.01 cm, 3A", "0.03 m, 2B", "0.0301 m, 3A"})
  @DisplayName("The line is the same in whatever unit the migration is given")
  @LeansOn(value = "DELGAIZO-2012", known = Known.DERIVED)
  void migrationInOtherUnits(String migration, String expected) {
    OrdinaryCase upAndOut = CLASS_2B.planned().with("hip centre migration", Given.of(migration));
    assertThat(upAndOut.answer().value("defect class")).isEqualTo(expected);
  }

  @ParameterizedTest(name = "{0} mm of ischial lysis: {1}")
  @CsvSource({"14, 3A", "14.9, 3A", "15, 3B", "15.1, 3B"})
  @DisplayName("Ischial lysis is severe from 15 mm: class 3A asks for less than 15")
  @LeansOn(value = "PAPROSKY-1994", known = Known.FROM_MEMORY)
  void severeIschialLysis(BigDecimal lysis, String expected) {
    OrdinaryCase upAndOut = CLASS_3A.planned().with("ischial lysis", lysis);
    assertThat(upAndOut.answer().value("defect class")).isEqualTo(expected);
  }

  @ParameterizedTest(name = "{0} mm of ischial lysis: {1}")
  @CsvSource({"6, agree", "6.9, agree", "7, conflict", "8, conflict"})
  @DisplayName("From 7 mm on ischial lysis is more than a class 2 has, and that is said")
  @LeansOn(value = "PAPROSKY-1994", known = Known.FROM_MEMORY)
  void mildIschialLysis(BigDecimal lysis, String expected) {
    Answer answer = CLASS_2B.planned().with("ischial lysis", lysis).answer();
    assertThat(answer.value("defect class")).isEqualTo("2B");
    assertThat(answer.value("findings agree")).isEqualTo(expected);
    assertThat(answer.rows().contains("CF-07")).isEqualTo(expected.equals("conflict"));
  }

  @ParameterizedTest(name = "a teardrop {0}: {1}")
  @CsvSource({"none, 3A", "mild, 3A", "moderate, 3A", "severe, 3A", "obliterated, 3B"})
  @DisplayName("Past the line 3A still shows the medial limb of the teardrop, 3B shows none")
  @LeansOn(
      value = {"PAP-TABLE-2021", "CLASS-TABLE-2020"},
      known = Known.FOUND)
  void teardropPastTheLine(String teardrop, String expected) {
    OrdinaryCase upAndOut = CLASS_3A.planned().with("teardrop lysis", teardrop);
    assertThat(upAndOut.answer().value("defect class")).isEqualTo(expected);
  }

  @ParameterizedTest(name = "Köhler line {0}, 5 mm inwards: {1}; 34 mm up and out: {2}")
  @CsvSource({"intact, 2A, 3A", "reached, 2C, 3A", "broken, 2C, 3B"})
  @DisplayName("A broken Köhler line is 2C below the migration line and 3B past it")
  @LeansOn(
      value = {"PAP-TABLE-2021", "CLASS-TABLE-2020", "WHEELESS-PAP"},
      known = Known.FOUND)
  void koehlerLine(String line, String below, String past) {
    OrdinaryCase inwards =
        OrdinaryCase.planned()
            .with("hip centre migration", 5)
            .with("migration direction", "medial")
            .with("köhler line", line);
    assertThat(inwards.answer().value("defect class")).isEqualTo(below);
    OrdinaryCase upAndOut = CLASS_3A.planned().with("köhler line", line);
    assertThat(upAndOut.answer().value("defect class")).isEqualTo(past);
  }

  @ParameterizedTest(name = "{0} clock hours of rim: {1}")
  @CsvSource({"2, agree, good", "3.9, agree, good", "4, conflict, compromised"})
  @DisplayName("2B has lost less than a third of the rim; a third or more compromises it")
  @LeansOn(value = "PAPROSKY-1994", known = Known.FROM_MEMORY)
  void thirdOfTheRim(BigDecimal hours, String findings, String support) {
    Answer answer = CLASS_2B.planned().with("rim loss", hours).answer();
    assertThat(answer.value("findings agree")).isEqualTo(findings);
    assertThat(answer.value("rim support")).isEqualTo(support);
  }

  @ParameterizedTest(name = "{0} % in class {1}: {2}")
  @CsvSource({
    "50, CLASS_2A, agree", "49, CLASS_2A, conflict", "50, CLASS_2C, agree",
    "49, CLASS_2C, conflict", "60, CLASS_3B, agree", "61, CLASS_3B, conflict"
  })
  @DisplayName("Contact that does not fit the class is said: half in 1 to 2C, well less in 3B")
  @LeansOn(
      value = {"VILLANUEVA-2008", "CLASS-TABLE-2020"},
      known = Known.FOUND)
  void contactOfTheClass(int contact, DefectPicture picture, String expected) {
    Answer answer = picture.planned().with("host bone contact", contact).answer();
    assertThat(answer.value("findings agree")).isEqualTo(expected);
    assertThat(answer.value("defect class")).isEqualTo(picture.className());
  }

  @ParameterizedTest(name = "{0} at 45 % contact")
  @CsvSource({"CLASS_3A", "CLASS_3B"})
  @DisplayName("At 45 % contact, where the published shares overlap, neither class 3 conflicts")
  @LeansOn(
      value = {"CLASS-TABLE-2020", "PAP-TABLE-2021"},
      known = Known.FOUND)
  void contactWhereSourcesOverlap(DefectPicture picture) {
    Answer answer = picture.planned().with("host bone contact", 45).answer();
    assertThat(answer.value("findings agree")).isEqualTo("agree");
    assertThat(answer.value("defect class")).isEqualTo(picture.className());
  }

  @ParameterizedTest(name = "{0} mm of migration: {1}")
  @CsvSource({"0, 1", "3, 1", "3.1, 2A"})
  @DisplayName("Up to 3 mm counts as no migration: films cannot tell less")
  @LeansOn(value = "HOUSE", known = Known.HOUSE_CHOICE)
  void measurementError(BigDecimal measured, String expected) {
    OrdinaryCase slight =
        OrdinaryCase.planned()
            .with("hip centre migration", measured)
            .with("migration direction", "superior");
    assertThat(slight.answer().value("defect class")).isEqualTo(expected);
  }
}
