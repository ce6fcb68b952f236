package org.cotyla.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Half of an em and a little is the mean letter of a plain sans serif; W takes almost a whole. */
@DisplayName("Text broken for a picture")
class FitTest {

  private static final double WIDTH = 120;
  private static final double SIZE = 10;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "a",
        "If the custom device does not seat, a cage spans the same defect.",
        "WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW",
        "illilli illilli illilli illilli illilli",
        "\uD83E\uDDB4\uD83E\uDDB4\uD83E\uDDB4\uD83E\uDDB4\uD83E\uDDB4\uD83E\uDDB4\uD83E\uDDB4\uD83E\uDDB4\uD83E\uDDB4\uD83E\uDDB4\uD83E\uDDB4\uD83E\uDDB4\uD83E\uDDB4 bones"
      })
  @DisplayName("keeps every letter, and no line is wider than its room")
  void fits(String text) {
    var lines = Fit.lines(text, WIDTH, SIZE);
    assertThat(lines)
        .allSatisfy(line -> assertThat(Fit.width(line, SIZE)).isLessThanOrEqualTo(WIDTH));
    assertThat(String.join("", lines).replace(" ", "")).isEqualTo(text.replace(" ", ""));
  }

  @ParameterizedTest
  @ValueSource(strings = {"illilli illilli illilli illilli illilli"})
  @DisplayName("takes fewer lines for narrow letters than for wide ones")
  void narrow(String text) {
    int narrow = Fit.lines(text, WIDTH, SIZE).size();
    assertThat(Fit.lines(text.replaceAll("[il]", "W"), WIDTH, SIZE)).hasSizeGreaterThan(narrow);
  }
}
