package org.cotyla.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.cotyla.rules.geometry.Geometry.call;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/**
 * Definition and published sensitivities: SARIALI-2009. The millimetres are derived from the
 * formula, which reproduces those sensitivities.
 */
@Label("Laws of the jump distance")
class JumpDistanceLawTest {

  @Property(tries = 300)
  @Label("Without offset it grows in step with the head")
  void linearInTheHead(
      @ForAll @DoubleRange(min = 1, max = 100) double head,
      @ForAll @DoubleRange(min = 0, max = 90) double inclination) {
    assertThat(distance(2 * head, inclination, 15, 0))
        .isCloseTo(2 * distance(head, inclination, 15, 0), within(1e-8));
  }

  @Property(tries = 300)
  @Label("A steeper cup and a centre farther out always shorten it")
  void fallsInInclinationAndOffset(
      @ForAll @DoubleRange(min = 0, max = 60) double inclination,
      @ForAll @DoubleRange(min = -5, max = 4) double offset) {
    double here = distance(32, inclination, 15, offset);
    assertThat(distance(32, inclination + 0.5, 15, offset)).isLessThan(here);
    assertThat(distance(32, inclination, 15, offset + 0.1)).isLessThan(here);
  }

  @Property(tries = 300)
  @Label("The radiographic form is the anatomic one after conversion")
  void bothFormsAgree(
      @ForAll @DoubleRange(min = 1, max = 89) double ai,
      @ForAll @DoubleRange(min = -60, max = 60) double aa) {
    double ri = call("radiographic inclination from anatomic", ai, aa);
    assertThat(call("jump distance from radiographic", 36, ri, 1))
        .isCloseTo(distance(36, ai, aa, 1), within(1e-7));
  }

  private static double distance(
      double head, double inclination, double anteversion, double offset) {
    return call("jump distance", head, inclination, anteversion, offset);
  }
}
