package org.cotyla.testcases.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.cotyla.evaluate.Engine;
import org.cotyla.testcases.house.DefectPicture;
import org.cotyla.testcases.house.House;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;

@DisplayName("Two published tables draw the migration line at 2 cm: the constant takes it")
@TestInstance(Lifecycle.PER_CLASS)
class MigrationLineVariantTest {

  private static final OrdinaryCase BETWEEN_THE_LINES =
      DefectPicture.CLASS_2B.planned().with("hip centre migration", 25);

  private Engine twoCentimetres;

  @BeforeAll
  void readCopy() {
    twoCentimetres = House.withConstant("migration line", "20");
  }

  @Test
  @DisplayName("25 mm up and out is 2B by the line of 3 cm and 3A by the line of 2 cm")
  @LeansOn(
      value = {"PAP-TABLE-2021", "CLASS-TABLE-2020", "DELGAIZO-2012", "MDPI-2C-2026"},
      known = Known.FOUND)
  void betweenTheLines() {
    assertThat(BETWEEN_THE_LINES.answer().value("defect class")).isEqualTo("2B");
    assertThat(BETWEEN_THE_LINES.answer(twoCentimetres).value("defect class")).isEqualTo("3A");
  }

  @Test
  @DisplayName("With 8 mm of lysis and a moderate teardrop 25 mm is a conflict by the line of 3 cm")
  @LeansOn(
      value = {"PAP-TABLE-2021", "DELGAIZO-2012"},
      known = Known.FOUND)
  void separatingCase() {
    OrdinaryCase separating =
        BETWEEN_THE_LINES.with(Map.of("ischial lysis", 8, "teardrop lysis", "moderate"));
    assertThat(separating.answer().value("defect class")).isEqualTo("2B");
    assertThat(separating.answer().value("findings agree")).isEqualTo("conflict");
    OrdinaryCase openRim = separating.with("rim loss", 4);
    assertThat(openRim.answer(twoCentimetres).value("defect class")).isEqualTo("3A");
    assertThat(openRim.answer(twoCentimetres).value("findings agree")).isEqualTo("agree");
  }

  @Test
  @DisplayName("Exactly 2 cm is below the line of 2 cm, and a millimetre more is past it")
  @LeansOn(value = "PAP-TABLE-2021", known = Known.FOUND)
  void exactlyOnTheLine() {
    OrdinaryCase onTheLine = BETWEEN_THE_LINES.with("hip centre migration", 20);
    assertThat(onTheLine.answer(twoCentimetres).value("defect class")).isEqualTo("2B");
    OrdinaryCase past = BETWEEN_THE_LINES.with("hip centre migration", 21);
    assertThat(past.answer(twoCentimetres).value("defect class")).isEqualTo("3A");
  }

  @Test
  @DisplayName("The textbook pictures keep their class by either line")
  @LeansOn(
      value = {"PAP-TABLE-2021", "CLASS-TABLE-2020"},
      known = Known.FOUND)
  void picturesKeepTheirClass() {
    for (DefectPicture picture : DefectPicture.values()) {
      assertThat(picture.planned().answer(twoCentimetres).value("defect class"))
          .isEqualTo(picture.className());
    }
  }
}
