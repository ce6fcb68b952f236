package org.cotyla.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.cotyla.rules.geometry.Geometry.call;
import static org.cotyla.rules.geometry.Geometry.result;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * After YOSHIMINE-2002 (citation from memory); the expression and the angles are derived.
 *
 * <p>Targets met by an angle: YOSHIMINE-2005 (found).
 */
@DisplayName("Oscillation angle")
class OscillationAngleTest {

  @ParameterizedTest(name = "head {0}, neck {1}: {2}")
  @DisplayName("By head and neck, the centre in the opening plane (derived)")
  @CsvSource({
    "22, 10, 125.93",
    "28, 14, 120.00",
    "28, 12, 129.25",
    "32, 12, 135.95",
    "36, 12, 141.06",
    "40, 12, 145.08"
  })
  void byHeadAndNeck(double head, double neck, double expected) {
    assertThat(angle(head, neck, 0)).isCloseTo(expected, within(0.01));
  }

  @ParameterizedTest(name = "head {0}, neck {1}, inset {2}: {3}")
  @DisplayName("A centre sunk below the opening plane costs motion (derived)")
  @CsvSource({"32, 12, 2, 121.59", "36, 12, 2, 128.30"})
  void withInset(double head, double neck, double inset, double expected) {
    assertThat(angle(head, neck, inset)).isCloseTo(expected, within(0.01));
  }

  @Test
  @DisplayName("Half the head's diameter as neck is exactly 120; 135 needs a ratio of 2.613")
  void ratios() {
    assertThat(angle(28, 14, 0)).isEqualTo(120);
    assertThat(angle(2.613 * 12, 12, 0)).isCloseTo(135, within(0.01));
  }

  @ParameterizedTest(name = "head {0}, neck {1}, inset {2}")
  @DisplayName("Measures that cannot be give nothing")
  @CsvSource({"-28, 12, 0", "28, 0, 0", "28, -1, 0", "28, 29, 0", "28, 12, 15", "28, 12, -15"})
  void outOfRange(double head, double neck, double inset) {
    assertThat(result("oscillation angle", head, neck, inset).isNothing()).isTrue();
  }

  private static double angle(double head, double neck, double inset) {
    return call("oscillation angle", head, neck, inset);
  }
}
