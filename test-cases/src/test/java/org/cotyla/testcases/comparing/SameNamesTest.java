package org.cotyla.testcases.comparing;

import static org.assertj.core.api.Assertions.assertThat;

import org.cotyla.compare.DecisionComparison;
import org.cotyla.compare.ProtocolComparison;
import org.cotyla.compare.ProtocolComparison.Meaning;
import org.cotyla.compare.Verdict;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finite.Effort;
import org.cotyla.testcases.generated.Sheets;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A name that no edit reaches is one name to both protocols")
class SameNamesTest {

  private static final Effort EFFORT = new Effort(20_000, 150, 12);

  @Test
  @DisplayName("so rows over arithmetic that say the same are proven to, whatever their order")
  void swappedRows() {
    ProtocolComparison comparison =
        compare(
            graded("R-1|< 50|-|low", "R-2|-|yes|low", "R-3|-|-|high"),
            graded("R-2|-|yes|low", "R-1|< 50|-|low", "R-3|-|-|high"));
    assertThat(grades(comparison).verdict()).isEqualTo(Verdict.PROVEN_SAME);
    assertThat(comparison.meaning()).isEqualTo(Meaning.SAME);
  }

  @Test
  @DisplayName("so a single number that an edge takes in is shown, though it is worked out")
  void edgeOverArithmetic() {
    ProtocolComparison comparison =
        compare(
            graded("R-1|< 50|yes|low", "R-3|-|-|high"),
            graded("R-1|<= 50|yes|low", "R-3|-|-|high"));
    DecisionComparison grades = grades(comparison);
    assertThat(grades.verdict()).isEqualTo(Verdict.DIFFERS);
    for (Recommendation answer : grades.regions().get(0).example().answers()) {
      assertThat(answer.calculations().get("load").plain()).isEqualTo("50");
    }
  }

  @Test
  @DisplayName("but a name that an edit reaches is two, and what it gives is told apart")
  void reached() {
    Sheets old = graded("R-1|< 50|-|low", "R-3|-|-|high");
    Sheets young =
        sheets("width * depth / 7 + 1")
            .decision("Grades", "F", "-", "load|flag", "grade", "R-1|< 50|-|low", "R-3|-|-|high");
    assertThat(grades(compare(old, young)).verdict()).isEqualTo(Verdict.DIFFERS);
  }

  private static Sheets graded(String... rows) {
    return sheets("width * depth / 7").decision("Grades", "F", "-", "load|flag", "grade", rows);
  }

  private static Sheets sheets(String load) {
    return new Sheets()
        .field("width", "number", "[0..60]")
        .field("depth", "number", "[0..60]")
        .field("flag", "yes/no", "-")
        .derived("grade", "choice", "low, middle, high")
        .calculation("load", load);
  }

  private static DecisionComparison grades(ProtocolComparison comparison) {
    return comparison.decisions().stream()
        .filter(decision -> decision.name().equals("Grades"))
        .findFirst()
        .orElseThrow();
  }

  private static ProtocolComparison compare(Sheets old, Sheets young) {
    return ProtocolComparison.of(Engine.of(old.protocol()), Engine.of(young.protocol()), EFFORT);
  }
}
