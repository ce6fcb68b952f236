package org.cotyla.testcases.comparing;

import static org.assertj.core.api.Assertions.assertThat;

import org.cotyla.compare.ProtocolComparison;
import org.cotyla.compare.ProtocolComparison.Meaning;
import org.cotyla.compare.Region;
import org.cotyla.compare.Verdict;
import org.cotyla.evaluate.Engine;
import org.cotyla.finite.Effort;
import org.cotyla.testcases.generated.Sheets;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Rows that contradict each other in both protocols")
class TornRowsTest {

  @Test
  @DisplayName("must leave the same results open in both to be the same")
  void tornOtherwise() {
    ProtocolComparison comparison = compare(torn("low"), torn("middle"));
    assertThat(comparison.decisions().get(0).verdict()).isEqualTo(Verdict.DIFFERS);
    assertThat(comparison.decisions().get(0).regions())
        .extracting(Region::sentence)
        .anyMatch(sentence -> sentence.contains("and now one gives middle"))
        .anyMatch(sentence -> sentence.contains("and none gives low any more"));
    assertThat(comparison.meaning()).isEqualTo(Meaning.DIFFERENT);
  }

  @Test
  @DisplayName("are the same where they give the same, whatever their order and tests")
  void tornAlike() {
    ProtocolComparison comparison =
        compare(torn("low"), graded("R-2|> 50|low", "R-1|(30..50]|high", "R-3|> 50|high"));
    assertThat(comparison.decisions().get(0).verdict()).isEqualTo(Verdict.PROVEN_SAME);
  }

  /** Its second row matches only where the first does too. */
  private static Sheets torn(String second) {
    return graded("R-1|> 30|high", "R-2|> 50|" + second);
  }

  private static Sheets graded(String... rows) {
    return new Sheets()
        .field("width", "number", "[0..60]")
        .derived("grade", "choice", "low, middle, high")
        .decision("Grades", "U", "-", "width", "grade", rows);
  }

  private static ProtocolComparison compare(Sheets old, Sheets young) {
    return ProtocolComparison.of(
        Engine.of(old.protocol()), Engine.of(young.protocol()), new Effort(20_000, 150, 12));
  }
}
