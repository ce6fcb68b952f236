package org.cotyla.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.finding.Case;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A case laid over another")
class OverlayTest {

  @Test
  @DisplayName("replaces what both state, however the names are spelt, and says so")
  void replaces() {
    Case lower = Case.of(Map.of("seed depth", 12)).titled("bed");
    Case upper = Case.of(Map.of("Seed_Depth", 14)).atStage("potting");
    Overlay overlay = Overlay.of(lower, upper);
    assertThat(overlay.result().findings()).isEqualTo(upper.findings());
    assertThat(overlay.restated()).containsExactly("Seed_Depth");
    assertThat(overlay.result().title()).isEqualTo("bed");
    assertThat(overlay.result().stage()).contains("potting");
  }

  @Test
  @DisplayName("adds what only it states after the rest, and leaves the stage if it has none")
  void adds() {
    Case lower = Case.of(Map.of("soil", "clay")).atStage("sowing");
    Case upper = Case.of(Map.of("watered", true)).titled("later");
    Case result = Overlay.of(lower, upper).result();
    assertThat(result.findings())
        .extracting(Case.Finding::field)
        .containsExactly("soil", "watered");
    assertThat(result.stage()).isEqualTo(Optional.of("sowing"));
    assertThat(result.title()).isEqualTo("later");
    assertThat(Overlay.of(lower, upper).restated()).isEqualTo(List.of());
  }
}
