package org.cotyla.compare;

import static org.assertj.core.api.Assertions.assertThat;

import org.cotyla.issue.Issue;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Ids of rows in two versions")
class RowIdsTest {

  private static final String GRADE_1 = "G-1|< 10|low";
  private static final String GRADE_2 = "G-2|>= 10|high";

  private static Written protocol() {
    return new Written()
        .given("loss", "number", "[0..100]")
        .derived("grade", "choice", "low, high");
  }

  private static Written grades(String... rows) {
    return protocol().decision("Grade", "U", "loss", "grade", rows);
  }

  private static Written both(String grade, String care) {
    return protocol()
        .derived("care", "choice", "plain, close")
        .decision("Grade", "U", "loss", "grade", grade)
        .decision("Care", "U", "loss", "care", care);
  }

  @Test
  @DisplayName("One that is gone and not retired is told at its old cell")
  void gone() {
    ProtocolComparison comparison = grades(GRADE_1, GRADE_2).against(grades(GRADE_1));
    assertThat(comparison.rowIds())
        .extracting(Issue::plain)
        .containsExactly(
            """
            warning W253 Grade!A8: row id `G-2` of the old workbook is gone and is not among the \
            retired ids
                  help: list it in the new workbook on the sheet Changes, so that it cannot come \
            back\
            """);
  }

  @Test
  @DisplayName("One that is gone and retired, however it is spelt, is as it should be")
  void retired() {
    Written young = grades(GRADE_1).retiring("g 2");
    assertThat(grades(GRADE_1, GRADE_2).against(young).rowIds()).isEmpty();
  }

  @Test
  @DisplayName("A row that got another id leaves one that is gone")
  void renamed() {
    Written young = grades(GRADE_1, "G-3|>= 10|high");
    assertThat(grades(GRADE_1, GRADE_2).against(young).rowIds())
        .extracting(Issue::code)
        .containsExactly("W253");
  }

  @Test
  @DisplayName("One that stands in another decision is told at its new cell")
  void moved() {
    Written young = both("C-1|< 10|low", "G-1|< 10|plain").retiring("Z-9");
    assertThat(both("G-1|< 10|low", "C-1|< 10|plain").against(young).rowIds())
        .extracting(Issue::plain)
        .containsExactly(
            """
            warning W254 Care!A7: row id `G-1` stood in `Grade` and now stands in `Care`
                  help: records of old plans mean the row that stood there; give it a new id and \
            retire the old one\
            """,
            """
            warning W254 Grade!A7: row id `C-1` stood in `Care` and now stands in `Grade`
                  help: records of old plans mean the row that stood there; give it a new id and \
            retire the old one\
            """);
  }

  @Test
  @DisplayName("Rows that are reordered, edited, or in a decision of another name keep theirs")
  void kept() {
    Written young =
        protocol().decision("Grade of loss", "U", "loss", "grade", GRADE_2, "G-1|< 9|low");
    assertThat(grades(GRADE_1, GRADE_2).against(young).rowIds()).isEmpty();
  }
}
