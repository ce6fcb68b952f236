package org.cotyla.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.compare.Written.verdict;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A name that the new protocol works out in another way")
class OtherGiverTest {

  @Test
  @DisplayName("is told apart where a calculation takes the place of a decision")
  void decisionToCalculation() {
    ProtocolComparison comparison = fromDecision().against(fromCalculation("width + 1"));
    assertThat(verdict(comparison, "Grades")).isEqualTo(Verdict.DIFFERS);
    assertThat(Written.decision(comparison, "Grades").edited()).isTrue();
  }

  @Test
  @DisplayName("is told apart where a decision takes the place of a calculation")
  void calculationToDecision() {
    ProtocolComparison comparison = fromCalculation("width + 1").against(fromDecision());
    assertThat(verdict(comparison, "Grades")).isEqualTo(Verdict.DIFFERS);
  }

  @Test
  @DisplayName("is never said to differ where the calculation gives what the decision gave")
  void sameFromCalculation() {
    ProtocolComparison comparison = fromDecision().against(fromCalculation("width"));
    assertThat(verdict(comparison, "Grades")).isIn(Verdict.PROVEN_SAME, Verdict.UNDECIDED);
  }

  @Test
  @DisplayName("cannot be compared where a case stated it, or states it now")
  void givenToCalculation() {
    Written stated = graded(sheets().given("load", "number", "[0..60]"));
    Written worked = fromCalculation("width");
    assertThat(verdict(stated.against(worked), "Grades")).isEqualTo(Verdict.INCOMPARABLE);
    assertThat(verdict(worked.against(stated), "Grades")).isEqualTo(Verdict.INCOMPARABLE);
  }

  @Test
  @DisplayName("cannot be compared where a case stated it, and a decision gives it now")
  void givenToDecision() {
    Written stated = graded(sheets().given("load", "number", "[0..60]"));
    assertThat(verdict(stated.against(fromDecision()), "Grades")).isEqualTo(Verdict.INCOMPARABLE);
    assertThat(verdict(fromDecision().against(stated), "Grades")).isEqualTo(Verdict.INCOMPARABLE);
  }

  private static Written fromDecision() {
    return graded(
        sheets()
            .derived("load", "number", "-")
            .decision("Load", "F", "width", "load", "L-1|-|width"));
  }

  private static Written fromCalculation(String load) {
    return graded(sheets().calculation("load", load));
  }

  private static Written sheets() {
    return new Written()
        .given("width", "number", "[0..60]")
        .derived("grade", "choice", "low, high");
  }

  private static Written graded(Written sheets) {
    return sheets.decision("Grades", "F", "load", "grade", "G-1|< 30|low", "G-2|-|high");
  }
}
