package org.cotyla.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.cotyla.rules.geometry.Geometry.call;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** All areas are derived from the geometry of the sphere. */
@Label("Laws of the clock face and of areas on the sphere")
class SphereLawTest {

  @Property(tries = 300)
  @Label("A left hip that is read as it is seen is the mirror image: 12 less each position")
  void leftHip(
      @ForAll @DoubleRange(min = 0, max = 12) double from,
      @ForAll @DoubleRange(min = 0, max = 12) double to) {
    assertThat(call("clock hours anticlockwise", 12 - from, 12 - to))
        .isCloseTo(call("clock hours", from, to), within(1e-8));
  }

  @Property(tries = 300)
  @Label("Two bands that meet are together the band from the first to the last")
  void bandsAddUp(
      @ForAll @DoubleRange(min = 0, max = 12) double hours,
      @ForAll @DoubleRange(min = 0, max = 90) double between) {
    assertThat(call("sector share", hours, 0, between) + call("sector share", hours, between, 90))
        .isCloseTo(call("sector share", hours, 0, 90), within(1e-8));
  }
}
