package org.cotyla.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.cotyla.compare.Difference.Kind;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Case;
import org.cotyla.finite.Answer;
import org.cotyla.finite.Claim;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A region's sentence")
class RegionTest {

  @Test
  @DisplayName("says every case only where that is proven")
  void everyCase() {
    assertThat(region(true).sentence()).isEqualTo("in every case: was low, is now high");
    assertThat(region(false).sentence()).isEqualTo("in some cases: was low, is now high");
  }

  private static Region region(boolean whole) {
    Recommendation answer =
        new Written()
            .given("width", "number", "-")
            .engine()
            .evaluate(Case.of(java.util.Map.of()).atStage("planning"));
    Difference difference =
        new Difference(
            new Claim.All(List.of()), Kind.RESULT, "", Optional.of("low"), Optional.of("high"));
    return new Region(
        List.of(), whole, difference, new Answer.Found(answer.findings(), List.of(answer)));
  }
}
