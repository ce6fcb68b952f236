package org.cotyla.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.cotyla.rules.geometry.Geometry.call;
import static org.cotyla.rules.geometry.Geometry.result;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** All areas are derived from the geometry of the sphere. */
@DisplayName("Clock face and areas on the sphere")
class SphereTest {

  private static final Offset<Double> AS_PRINTED = within(0.005 + 1e-9);

  @ParameterizedTest(name = "from {0} to {1}: {2} hours")
  @DisplayName("Hours are counted clockwise, and a round back to the start is 12")
  @CsvSource({
    "10, 2, 4",
    "9, 5, 8",
    "5, 9, 4",
    "11, 1, 2",
    "12, 3, 3",
    "0, 3, 3",
    "9, 12, 3",
    "9, 0, 3",
    "3, 3, 12",
    "12, 0, 12",
    "10.5, 1.25, 2.75",
    "1.1, 1.3, 0.2"
  })
  void clockwise(double from, double to, double hours) {
    assertThat(call("clock hours", from, to)).isEqualTo(hours);
  }

  @Test
  @DisplayName("The sense matters: 9 to 5 is 8 hours clockwise and only 4 anticlockwise")
  void sense() {
    assertThat(call("clock hours", 9, 5)).isEqualTo(8);
    assertThat(call("clock hours anticlockwise", 9, 5)).isEqualTo(4);
  }

  @Test
  @DisplayName("S-1, S-2: sectors from pole to rim")
  void fullSectors() {
    assertThat(call("sector share", call("clock hours", 10, 2), 0, 90))
        .isCloseTo(33.33, AS_PRINTED);
    assertThat(call("sector share", call("clock hours", 9, 5), 0, 90)).isCloseTo(66.67, AS_PRINTED);
    assertThat(call("sector share", 1, 0, 90)).isCloseTo(8.333, within(0.0005));
  }

  @Test
  @DisplayName("S-3, S-4: the outer band of a sector alone")
  void outerBands() {
    assertThat(call("sector share", 4, 45, 90)).isCloseTo(23.57, AS_PRINTED);
    assertThat(call("sector share", 8, 45, 90)).isCloseTo(47.14, AS_PRINTED);
  }

  @ParameterizedTest(name = "half-angle {0}: {1} %")
  @DisplayName("S-5: the medial cap")
  @CsvSource({"30, 13.40", "45, 29.29", "60, 50.00", "0, 0", "90, 100"})
  void caps(double halfAngle, double share) {
    assertThat(call("cap share", halfAngle)).isCloseTo(share, AS_PRINTED);
  }

  @Test
  @DisplayName("S-6: a sector and the part of a medial cap outside it")
  void sectorAndCap() {
    double lost = call("sector share", 4, 0, 90) + call("sector share", 8, 0, 30);
    assertThat(lost).isCloseTo(42.26, AS_PRINTED);
    assertThat(100 - lost).isCloseTo(57.74, AS_PRINTED);
  }

  @Test
  @DisplayName("S-7: the outer band of a sector and the whole medial cap")
  void bandAndCap() {
    double lost = call("sector share", 8, 30, 90) + call("cap share", 30);
    assertThat(lost).isCloseTo(71.13, AS_PRINTED);
    assertThat(100 - lost).isCloseTo(28.87, AS_PRINTED);
  }

  @ParameterizedTest(name = "{0} mm: {1} cm2")
  @DisplayName("S-8: the area of a hemisphere")
  @CsvSource({"52, 42.47", "66, 68.42"})
  void hemispheres(double diameter, double area) {
    assertThat(call("hemisphere area", diameter)).isCloseTo(area, AS_PRINTED);
  }

  @ParameterizedTest(name = "opening angle {0}: {1} %")
  @DisplayName("A cup that is less than a hemisphere")
  @CsvSource({"160, 82.64", "165, 86.95", "170, 91.28", "180, 100"})
  void cups(double openingAngle, double share) {
    assertThat(call("cup share", openingAngle)).isCloseTo(share, AS_PRINTED);
  }

  @Test
  @DisplayName("Measures that cannot be give nothing")
  void outOfRange() {
    assertThat(result("clock hours", 13, 2).isNothing()).isTrue();
    assertThat(result("clock hours", 2, -1).isNothing()).isTrue();
    assertThat(result("sector share", 13, 0, 90).isNothing()).isTrue();
    assertThat(result("sector share", 4, 60, 30).isNothing()).isTrue();
    assertThat(result("sector share", 4, 0, 91).isNothing()).isTrue();
    assertThat(result("cap share", 91).isNothing()).isTrue();
    assertThat(result("cup share", 181).isNothing()).isTrue();
    assertThat(result("hemisphere area", 0).isNothing()).isTrue();
    assertThat(result("hemisphere area", -52).isNothing()).isTrue();
  }
}
