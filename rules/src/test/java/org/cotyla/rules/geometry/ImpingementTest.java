package org.cotyla.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.cotyla.rules.geometry.Geometry.call;
import static org.cotyla.rules.geometry.Geometry.result;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Component impingement only: no bone, no soft tissue. All numbers are derived. */
@DisplayName("Motion until the neck meets the rim")
class ImpingementTest {

  private static final String FLEXION = "flexion to impingement";
  private static final String EXTENSION = "extension to impingement";
  private static final String INTERNAL = "internal rotation at 90 flexion to impingement";
  private static final String EXTERNAL = "external rotation to impingement";

  @ParameterizedTest(name = "cup {0}/{1}, head {2}, neck {3}")
  @DisplayName("Stem version 15 and a neck-shaft angle of 135, to a tenth of a degree (derived)")
  @CsvSource(
      textBlock =
          """
          # RI, RA, head, neck, flexion, extension, internal at 90, external
          40,   15, 28,   14,   116.2,   48.6,      27.4,           55.2
          40,   15, 32,   12,   128.7,   61.1,      38.7,           70.5
          40,   15, 36,   12,   132.9,   65.3,      42.3,           75.9
          40,   20, 36,   12,   137.7,   57.9,      47.1,           66.5
          45,   25, 36,   12,   148.6,   52.8,      56.9,           54.3
          45,   25, 28,   14,   131.5,   35.7,      41.7,           36.7
          """)
  void table(
      double ri,
      double ra,
      double head,
      double neck,
      double flexion,
      double extension,
      double internal,
      double external) {
    assertThat(call(FLEXION, ri, ra, 15, 135, head, neck)).isCloseTo(flexion, within(0.1));
    assertThat(call(EXTENSION, ri, ra, 15, 135, head, neck)).isCloseTo(extension, within(0.1));
    assertThat(call(INTERNAL, ri, ra, 15, 135, head, neck)).isCloseTo(internal, within(0.1));
    assertThat(call(EXTERNAL, ri, ra, 15, 135, head, neck)).isCloseTo(external, within(0.1));
  }

  @Test
  @DisplayName("A start that is already in contact leaves nothing to turn: 0")
  void contactAtTheStart() {
    assertThat(call(INTERNAL, 40, -40, 0, 135, 28, 14)).isZero();
    assertThat(call(FLEXION, 40, -70, 0, 135, 28, 14)).isZero();
  }

  @Test
  @DisplayName("A neck in line with the shaft does not move when it rotates about it: 180")
  void neverInContact() {
    assertThat(call(EXTERNAL, 30, 10, 0, 180, 36, 12)).isEqualTo(180);
  }

  @ParameterizedTest(name = "{0}/{1}, stem {2}, neck-shaft {3}, head {4}, neck {5}")
  @DisplayName("Measures that cannot be give nothing")
  @CsvSource({
    "-1, 15, 15, 135, 28, 12",
    "91, 15, 15, 135, 28, 12",
    "40, 91, 15, 135, 28, 12",
    "40, 15, -91, 135, 28, 12",
    "40, 15, 15, 89, 28, 12",
    "40, 15, 15, 181, 28, 12",
    "40, 15, 15, 135, 0, 12",
    "40, 15, 15, 135, 28, 0",
    "40, 15, 15, 135, 12, 28"
  })
  void outOfRange(
      double ri, double ra, double version, double neckShaft, double head, double neck) {
    for (String name : new String[] {FLEXION, EXTENSION, INTERNAL, EXTERNAL}) {
      assertThat(result(name, ri, ra, version, neckShaft, head, neck).isNothing()).isTrue();
    }
  }
}
