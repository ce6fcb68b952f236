package org.cotyla.testcases.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.testcases.house.DefectPicture.CLASS_2B;
import static org.cotyla.testcases.house.DefectPicture.CLASS_3A;

import org.cotyla.testcases.house.Answer;
import org.cotyla.testcases.house.DefectPicture;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The class of bone loss follows its published criteria")
class DefectClassTest {

  @ParameterizedTest(name = "{0}")
  @EnumSource
  @DisplayName("The textbook picture of a class is read as that class, and its findings agree")
  @LeansOn(
      value = {"PAP-TABLE-2021", "CLASS-TABLE-2020"},
      known = Known.FOUND)
  @LeansOn(value = "PAPROSKY-1994", known = Known.FROM_MEMORY)
  void textbookPictures(DefectPicture picture) {
    Answer answer = picture.planned().answer();
    assertThat(answer.value("defect class")).isEqualTo(picture.className());
    assertThat(answer.value("findings agree")).isEqualTo("agree");
    assertThat(answer.list("Conflicting findings")).isEmpty();
  }

  @Test
  @DisplayName("3B raises the suspicion of a discontinuity by itself, and the work-up for it")
  @LeansOn(value = "CLASS-TABLE-2020", known = Known.FOUND)
  void severeLossRaisesSuspicion() {
    Answer answer =
        DefectPicture.CLASS_3B.planned().with("ct scan", false).without("ct age").answer();
    assertThat(answer.value("discontinuity")).isEqualTo("suspected");
    assertThat(answer.rows()).contains("WU-06", "WU-07", "CA-08");
  }

  @Test
  @DisplayName("Up and out with a broken Köhler line and severe lysis: 3B, and said to conflict")
  @LeansOn(
      value = {"CLASS-TABLE-2020", "WHEELESS-PAP"},
      known = Known.FOUND)
  @LeansOn(value = "PAPROSKY-1994", known = Known.FROM_MEMORY)
  void conflictingCriteria() {
    Answer answer =
        CLASS_3A.planned().with("köhler line", "broken").with("ischial lysis", 20).answer();
    assertThat(answer.value("defect class")).isEqualTo("3B");
    assertThat(answer.value("findings agree")).isEqualTo("conflict");
    assertThat(answer.rows()).contains("CF-02", "CF-03", "CA-13");
  }

  @Test
  @DisplayName("High migration with otherwise mild findings is said to conflict, not averaged away")
  @LeansOn(value = "PAPROSKY-1994", known = Known.FROM_MEMORY)
  void highMigrationAlone() {
    Answer answer =
        CLASS_2B.planned().with("hip centre migration", 40).with("teardrop lysis", "none").answer();
    assertThat(answer.value("defect class")).isEqualTo("3A");
    assertThat(answer.rows()).contains("CF-01", "CA-13");
  }

  @ParameterizedTest(name = "without {0}")
  @ValueSource(strings = {"ischial lysis", "köhler line"})
  @DisplayName("With one of the four films' findings missing no class is claimed, and it is asked")
  @LeansOn(value = "WHEELESS-PAP", known = Known.FOUND)
  void missingCriterion(String field) {
    Answer answer = CLASS_3A.planned().without(field).answer();
    assertThat(answer.possible("defect class").isCertain()).isFalse();
    assertThat(answer.value("defect class")).isEqualTo("3A, 3B");
    assertThat(answer.missing()).contains(field);
  }

  @ParameterizedTest(name = "without {0}")
  @ValueSource(strings = {"hip centre migration", "teardrop lysis"})
  @DisplayName("Without migration or teardrop more than two classes stay possible")
  @LeansOn(value = "WHEELESS-PAP", known = Known.FOUND)
  void missingMigrationOrTeardrop(String field) {
    Answer answer = OrdinaryCase.planned().without(field).answer();
    assertThat(answer.possible("defect class").isCertain()).isFalse();
    assertThat(answer.missing()).contains(field);
  }

  @Test
  @DisplayName("Straight up, not past the line, is 2A: one of the two published tables has it so")
  @LeansOn(value = "PAP-TABLE-2021", known = Known.FOUND)
  void straightUp() {
    Answer answer =
        OrdinaryCase.planned()
            .with("hip centre migration", 10)
            .with("migration direction", "superior")
            .answer();
    assertThat(answer.value("defect class")).isEqualTo("2A");
  }
}
