package org.cotyla.compare;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A row that compares a finding with a worked-out limit")
class SplitRowTest {

  private static Written votes(String... rows) {
    return new Written()
        .given("size", "number", "[0..100]")
        .given("room", "number", "[0..100]")
        .given("class", "choice", "a, b, c")
        .options("plan", "cup", "cage")
        .calculation("limit", "1.5 * room + 2")
        .votes("Plan by size", "plan", "size|class", rows);
  }

  private static final String CAGE = "V-2|-|a|cage|favour|1";

  private static Written whole() {
    return votes("V-1|> limit|-|cup|oppose|2", CAGE);
  }

  @Test
  @DisplayName("is proven the same when it is split into two that say the same")
  void split() {
    Written young = votes("V-1|> limit|a, b|cup|oppose|2", "V-9|> limit|c|cup|oppose|2", CAGE);
    ProtocolComparison comparison = whole().against(young);
    assertThat(Written.verdict(comparison, "Plan by size")).isEqualTo(Verdict.PROVEN_SAME);
    assertThat(comparison.rankings().get(0).first().isSame()).isTrue();
    assertThat(comparison.meaning()).isEqualTo(ProtocolComparison.Meaning.SAME);
  }

  @Test
  @DisplayName("differs when one of the two takes in the limit itself")
  void edge() {
    Written young = votes("V-1|> limit|a, b|cup|oppose|2", "V-9|>= limit|c|cup|oppose|2", CAGE);
    assertThat(Written.verdict(whole().against(young), "Plan by size")).isEqualTo(Verdict.DIFFERS);
  }

  @Test
  @DisplayName("says of a limit that moved what holds before and what holds now")
  void moved() {
    Written young =
        new Written()
            .given("size", "number", "[0..100]")
            .given("room", "number", "[0..100]")
            .given("class", "choice", "a, b, c")
            .options("plan", "cup", "cage")
            .calculation("limit", "1.5 * room + 5")
            .votes("Plan by size", "plan", "size|class", "V-1|> limit|-|cup|oppose|2", CAGE);
    DecisionComparison comparison = Written.decision(whole().against(young), "Plan by size");
    assertThat(comparison.regions())
        .extracting(Region::when)
        .containsExactly("size above limit before, and size not above limit now");
  }
}
