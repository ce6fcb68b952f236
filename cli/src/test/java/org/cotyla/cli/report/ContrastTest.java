package org.cotyla.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Contrast as WCAG 2.2 works it out (success criteria 1.4.3 and 1.4.11). */
@DisplayName("The colours of a report")
class ContrastTest {

  @ParameterizedTest(name = "{0} on {1}")
  @CsvSource({
    "INK, PAPER",
    "INK, TINT",
    "INK, OPEN",
    "QUIET, PAPER",
    "QUIET, TINT",
    "QUIET, OPEN",
    "ACCENT, PAPER",
    "ACCENT, OPEN",
    "PAPER, ACCENT",
    "AGAINST, PAPER"
  })
  @DisplayName("keep text readable: at least 4.5 to 1")
  void text(Palette text, Palette ground) {
    assertThat(contrast(text, ground)).isGreaterThanOrEqualTo(4.5);
  }

  @ParameterizedTest(name = "{0} on {1}")
  @CsvSource({"LINE, PAPER", "LINE, TINT", "AGAINST, PAPER", "ACCENT, OPEN", "INK, OPEN"})
  @DisplayName("keep lines that mean something visible: at least 3 to 1")
  void lines(Palette line, Palette ground) {
    assertThat(contrast(line, ground)).isGreaterThanOrEqualTo(3);
  }

  private static double contrast(Palette one, Palette other) {
    List<Double> sorted =
        java.util.stream.Stream.of(luminance(one), luminance(other)).sorted().toList();
    return (sorted.get(1) + 0.05) / (sorted.get(0) + 0.05);
  }

  private static double luminance(Palette colour) {
    int rgb = Integer.parseInt(colour.hex().substring(1), 16);
    return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
  }

  private static double linear(int channel) {
    double share = (channel & 0xFF) / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }
}
