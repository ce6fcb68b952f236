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
 * Definition and published sensitivities: SARIALI-2009. The millimetres are derived from the
 * formula, which reproduces those sensitivities.
 */
@DisplayName("Jump distance")
class JumpDistanceTest {

  @ParameterizedTest(name = "head {0}: {1} mm, planar {6} mm")
  @DisplayName("At anatomic 45/15, by head and by offset of its centre (derived)")
  @CsvSource(
      textBlock =
          """
          # head, o=0,     o=1,   o=2,   o=3,   o=-1,  radiographic 45 with o=0
          22,     8.5948,  7.66,  6.71,  5.72,  9.51,  8.4190
          28,     10.9389, 10.01, 9.07,  8.10,  11.85, 10.7151
          32,     12.5016, 11.57, 10.63, 9.67,  13.42, 12.2459
          36,     14.0643, 13.14, 12.20, 11.24, 14.98, 13.7766
          40,     15.6270, 14.70, 13.76, 12.81, 16.54, 15.3073
          """)
  void byHeadAndOffset(
      double head, double none, double one, double two, double three, double sunk, double planar) {
    assertThat(distance(head, 45, 15, 0)).isCloseTo(none, within(0.0001));
    assertThat(distance(head, 45, 15, 1)).isCloseTo(one, within(0.01));
    assertThat(distance(head, 45, 15, 2)).isCloseTo(two, within(0.01));
    assertThat(distance(head, 45, 15, 3)).isCloseTo(three, within(0.01));
    assertThat(distance(head, 45, 15, -1)).isCloseTo(sunk, within(0.01));
    assertThat(call("jump distance from radiographic", head, 45, 0))
        .isCloseTo(planar, within(0.0001));
  }

  @ParameterizedTest(name = "inclination {0}")
  @DisplayName("At other inclinations with anteversion 15 and no offset (derived)")
  @CsvSource(
      textBlock =
          """
          # incl, 22,    28,    32,    36,    40
          30,     11.14, 14.18, 16.21, 18.23, 20.26
          40,     9.47,  12.05, 13.77, 15.49, 17.21
          50,     7.70,  9.80,  11.20, 12.60, 14.00
          60,     5.85,  7.45,  8.52,  9.58,  10.64
          """)
  void byInclination(double inclination, double a, double b, double c, double d, double e) {
    double[] expected = {a, b, c, d, e};
    double[] heads = {22, 28, 32, 36, 40};
    for (int i = 0; i < heads.length; i++) {
      assertThat(distance(heads[i], inclination, 15, 0)).isCloseTo(expected[i], within(0.01));
    }
  }

  @ParameterizedTest(name = "mobile ball of {0} mm: {1} mm")
  @DisplayName("Dual mobility counts with the diameter of its mobile ball (derived)")
  @CsvSource({"42, 16.41", "46, 17.97", "52, 20.32"})
  void dualMobility(double ball, double expected) {
    assertThat(distance(ball, 45, 15, 0)).isCloseTo(expected, within(0.01));
  }

  @Test
  @DisplayName("The published sensitivities (SARIALI-2009, found) come out of the formula")
  void sensitivities() {
    double perInclination = (distance(32, 80, 15, 0) - distance(32, 0, 15, 0)) / 80;
    assertThat(perInclination).isCloseTo(-0.25, within(0.01)).isCloseTo(-0.247, within(0.001));
    assertThat(distance(32, 45.5, 15, 0) - distance(32, 44.5, 15, 0))
        .isCloseTo(-0.257, within(0.001));

    double perAnteversion = (distance(32, 45, 40, 0) - distance(32, 45, 0, 0)) / 40;
    assertThat(perAnteversion).isCloseTo(0.05, within(0.01)).isCloseTo(0.048, within(0.001));
    assertThat(distance(32, 45, 15.5, 0) - distance(32, 45, 14.5, 0))
        .isCloseTo(0.034, within(0.001));

    double perDiameterAt45 = (distance(33, 45, 15, 0) - distance(31, 45, 15, 0)) / 2;
    assertThat(perDiameterAt45).isCloseTo(0.4, within(0.02)).isCloseTo(0.391, within(0.001));
    double perDiameterAt60 = (distance(33, 60, 15, 0) - distance(31, 60, 15, 0)) / 2;
    assertThat(perDiameterAt60).isCloseTo(0.25, within(0.02)).isCloseTo(0.266, within(0.001));

    double perOffset = distance(32, 45, 15, 0.5) - distance(32, 45, 15, -0.5);
    assertThat(perOffset).isCloseTo(-0.92, within(0.01)).isCloseTo(-0.921, within(0.001));
  }

  @Test
  @DisplayName("A steep cup undoes a large head: 40 mm at 60 is below 28 mm at 45 (derived)")
  void steepCup() {
    assertThat(distance(40, 60, 15, 0)).isLessThan(distance(28, 45, 15, 0));
  }

  @Test
  @DisplayName("A head that the cup does not cover at all has no way to go")
  void uncovered() {
    assertThat(distance(32, 80, 0, 10)).isZero();
  }

  @ParameterizedTest(name = "head {0}, cup {1}/{2}, offset {3}")
  @DisplayName("Measures that cannot be give nothing")
  @CsvSource({
    "-32, 45, 15, 0",
    "0, 45, 15, 0",
    "32, -1, 15, 0",
    "32, 91, 15, 0",
    "32, 45, 100, 0",
    "32, 45, 15, 16.1",
    "32, 45, 15, -16.1",
    "201, 45, 15, 0"
  })
  void outOfRange(double head, double inclination, double anteversion, double offset) {
    assertThat(result("jump distance", head, inclination, anteversion, offset).isNothing())
        .isTrue();
  }

  private static double distance(
      double head, double inclination, double anteversion, double offset) {
    return call("jump distance", head, inclination, anteversion, offset);
  }
}
