package org.cotyla.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.rules.geometry.Geometry.call;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/**
 * After YOSHIMINE-2002 (citation from memory); the expression and the angles are derived.
 *
 * <p>Targets met by an angle: YOSHIMINE-2005 (found).
 */
@Label("Laws of the oscillation angle")
class OscillationAngleLawTest {

  @Property(tries = 300)
  @Label("A larger head gives more motion, a thicker neck or a deeper centre less")
  void monotone(
      @ForAll @DoubleRange(min = 22, max = 60) double head,
      @ForAll @DoubleRange(min = 8, max = 18) double neck,
      @ForAll @DoubleRange(min = 0, max = 3) double inset) {
    double here = angle(head, neck, inset);
    assertThat(angle(head + 1, neck, inset)).isGreaterThan(here);
    assertThat(angle(head, neck + 0.5, inset)).isLessThan(here);
    assertThat(angle(head, neck, inset + 0.5)).isLessThan(here);
  }

  private static double angle(double head, double neck, double inset) {
    return call("oscillation angle", head, neck, inset);
  }
}
