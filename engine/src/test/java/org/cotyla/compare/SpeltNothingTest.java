package org.cotyla.compare;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A result that is spelt like something else")
class SpeltNothingTest {

  private static Written grades(String... rows) {
    return new Written()
        .given("loss", "number", "[0..100]")
        .derived("grade", "choice", "nothing, some")
        .decision("Grade", "U", "loss", "grade", rows);
  }

  @Test
  @DisplayName("is another than no result at all")
  void nothing() {
    Written old = grades("G-1|< 10|nothing", "G-2|>= 10|some");
    Written young = grades("G-2|>= 10|some");
    DecisionComparison comparison = Written.decision(old.against(young), "Grade");
    assertThat(comparison.verdict()).isEqualTo(Verdict.DIFFERS);
    assertThat(comparison.regions().get(0).sentence())
        .isEqualTo("loss below 10: was \"nothing\", is now nothing");
  }

  @Test
  @DisplayName("is another than two results side by side")
  void joined() {
    Written old = texts("G-1|-|\"a; two b\"|\"c\"");
    Written young = texts("G-1|-|\"a\"|\"b; two c\"");
    assertThat(Written.verdict(old.against(young), "Grade")).isEqualTo(Verdict.DIFFERS);
  }

  private static Written texts(String row) {
    return new Written()
        .given("loss", "number", "[0..100]")
        .derived("one", "text", "-")
        .derived("two", "text", "-")
        .decision("Grade", "U", "loss", "one|two", row);
  }
}
