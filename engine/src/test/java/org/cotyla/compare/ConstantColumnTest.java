package org.cotyla.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.compare.Written.verdict;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A column whose name is a constant")
class ConstantColumnTest {

  @Test
  @DisplayName("tells a table apart when the constant gets another value")
  void otherValue() {
    ProtocolComparison comparison = written("4").against(written("5"));
    assertThat(verdict(comparison, "Grades")).isEqualTo(Verdict.DIFFERS);
  }

  @Test
  @DisplayName("is proven to make no difference when its tests hold of both values")
  void noMatter() {
    ProtocolComparison comparison = written("2").against(written("3"));
    assertThat(verdict(comparison, "Grades")).isEqualTo(Verdict.PROVEN_SAME);
  }

  private static Written written(String line) {
    return new Written()
        .given("width", "number", "[0..60]")
        .derived("grade", "choice", "low, high")
        .calculation("house line", line)
        .decision("Grades", "F", "house line|width", "grade", "G-1|> 4|> 30|high", "G-2|-|-|low");
  }
}
