package org.cotyla.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.compare.Written.verdict;

import org.cotyla.compare.ProtocolComparison.Meaning;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A given field of which no value is allowed in both protocols")
class DisjointFieldTest {

  @Test
  @DisplayName("leaves what hangs on it incomparable, and nothing else proven by that")
  void numbers() {
    ProtocolComparison comparison = written("[0..10]", "< 30").against(written("[20..30]", "< 40"));
    assertThat(verdict(comparison, "Grades")).isEqualTo(Verdict.DIFFERS);
    assertThat(verdict(comparison, "Depths")).isEqualTo(Verdict.INCOMPARABLE);
    assertThat(comparison.meaning()).isEqualTo(Meaning.DIFFERENT);
  }

  @Test
  @DisplayName("does not keep the rest from being proven the same")
  void rest() {
    ProtocolComparison comparison =
        written("[0..10]", "< 30").against(written("[20..30]", "not(>= 30)"));
    assertThat(verdict(comparison, "Grades").isSame()).isTrue();
  }

  private static Written written(String depth, String low) {
    return new Written()
        .given("width", "number", "[0..60]")
        .given("depth", "number", depth)
        .derived("grade", "choice", "low, high")
        .derived("deep", "yes/no", "-")
        .decision("Grades", "F", "width", "grade", "G-1|" + low + "|low", "G-2|-|high")
        .decision("Depths", "F", "depth", "deep", "D-1|> 5|yes", "D-2|-|no");
  }
}
