package org.cotyla.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.cotyla.rules.geometry.Geometry.SYSTEMS;
import static org.cotyla.rules.geometry.Geometry.call;
import static org.cotyla.rules.geometry.Geometry.convert;
import static org.cotyla.rules.geometry.Geometry.result;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Definitions: MURRAY-1993. The equations and every number here are derived from them. */
@DisplayName("Radiographic, operative and anatomic orientation")
class OrientationTest {

  private static final Offset<Double> AS_PRINTED = within(0.00005 + 1e-9);

  @ParameterizedTest(name = "{0}: all six angles from each of the three pairs")
  @DisplayName("Each pair of angles gives the other two pairs")
  @CsvSource(
      textBlock =
          """
          # id,     AI,      AA,      RI,      RA,      OI,      OA    (source: derived)
          M-1, 42.2735, 22.6291, 40,      15,      38.3808, 19.2790
          M-2, 43.9582, 29.5202, 40,      20,      37.1586, 25.4138
          M-3, 43.9582, 22.1760, 41.7633, 15.1889, 40,      20
          M-4, 50.1443, 22.9098, 47.8137, 17.3877, 45,      25
          M-5, 45,      15,      44.0070, 10.5453, 43.0795, 14.5108
          M-6, 45,      20,      43.2192, 13.9954, 41.6411, 18.8817
          M-7, 60,      30,      56.3099, 25.6589, 48.5904, 40.8934
          """)
  void pairsAgree(String id, double ai, double aa, double ri, double ra, double oi, double oa) {
    double[][] pairs = {{ri, ra}, {oi, oa}, {ai, aa}};
    for (int from = 0; from < 3; from++) {
      for (int to = 0; to < 3; to++) {
        if (from != to) {
          double[] found = convert(SYSTEMS.get(from), SYSTEMS.get(to), pairs[from]);
          // A given angle that is printed to 4 decimals moves the others by no more than twice
          // that.
          assertThat(found[0]).as(id + " inclination").isCloseTo(pairs[to][0], within(0.0002));
          assertThat(found[1]).as(id + " anteversion").isCloseTo(pairs[to][1], within(0.0002));
        }
      }
    }
  }

  @Test
  @DisplayName("40/15 on the film is as printed to the fourth decimal")
  void printedDigits() {
    assertThat(call("operative inclination from radiographic", 40, 15))
        .isCloseTo(38.3808, AS_PRINTED);
    assertThat(call("operative anteversion from radiographic", 40, 15))
        .isCloseTo(19.2790, AS_PRINTED);
    assertThat(call("anatomic inclination from radiographic", 40, 15))
        .isCloseTo(42.2735, AS_PRINTED);
    assertThat(call("anatomic anteversion from radiographic", 40, 15))
        .isCloseTo(22.6291, AS_PRINTED);
  }

  @ParameterizedTest(name = "{0}/{1} on the film is {2}/{3} in theatre")
  @DisplayName("The corners of the safe zone (LEWINNEK-1978), in operative angles (derived)")
  @CsvSource({
    "30, 5,  29.87, 5.77",
    "30, 25, 26.95, 28.30",
    "50, 5,  49.74, 7.75",
    "50, 25, 43.97, 35.96"
  })
  void safeZoneCorners(double ri, double ra, double oi, double oa) {
    double[] found = convert("radiographic", "operative", new double[] {ri, ra});
    assertThat(found[0]).isCloseTo(oi, within(0.01));
    assertThat(found[1]).isCloseTo(oa, within(0.01));
  }

  @ParameterizedTest(name = "pelvis tilted back by {0}: {1}/{2} on the film")
  @DisplayName("Tilt of the pelvis adds to operative anteversion alone (derived)")
  @CsvSource({"10, 42.24, 22.54", "20, 45.66, 29.75", "-10, 38.75, 7.26"})
  void pelvicTilt(double tilt, double ri, double ra) {
    double[] operative = convert("radiographic", "operative", new double[] {40, 15});
    double[] tilted = {operative[0], operative[1] + tilt};
    double[] film = convert("operative", "radiographic", tilted);
    assertThat(film[0]).isCloseTo(ri, within(0.01));
    assertThat(film[1]).isCloseTo(ra, within(0.01));
  }

  @ParameterizedTest(name = "inclination {0}")
  @DisplayName("Without anteversion all three systems agree")
  @ValueSource(doubles = {1, 30, 45, 60, 89})
  void agreeWithoutAnteversion(double inclination) {
    for (String from : SYSTEMS) {
      for (String to : SYSTEMS) {
        if (!from.equals(to)) {
          double[] found = convert(from, to, new double[] {inclination, 0});
          assertThat(found[0]).isCloseTo(inclination, within(1e-9));
          assertThat(found[1]).isZero();
        }
      }
    }
  }

  @ParameterizedTest(name = "{0}/{1}")
  @DisplayName("Angles that name no orientation give nothing")
  @CsvSource({"0, 15", "90, 15", "-5, 15", "120, 15", "40, 90", "40, -90", "40, 400"})
  void outOfRange(double inclination, double anteversion) {
    for (String from : SYSTEMS) {
      for (String to : SYSTEMS) {
        if (!from.equals(to)) {
          assertThat(result(to + " inclination from " + from, inclination, anteversion).isNothing())
              .isTrue();
          assertThat(result(to + " anteversion from " + from, inclination, anteversion).isNothing())
              .isTrue();
        }
      }
    }
  }
}
