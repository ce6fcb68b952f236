package org.cotyla.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.cotyla.rules.geometry.Geometry.SYSTEMS;
import static org.cotyla.rules.geometry.Geometry.call;
import static org.cotyla.rules.geometry.Geometry.convert;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** Definitions: MURRAY-1993. The equations and every number here are derived from them. */
@Label("Laws of radiographic, operative and anatomic orientation")
class OrientationLawTest {

  @Property(tries = 300)
  @Label("There and back again is the same orientation to a millionth of a degree")
  void roundTrip(
      @ForAll @DoubleRange(min = 5, max = 85) double inclination,
      @ForAll @DoubleRange(min = -80, max = 80) double anteversion) {
    double[] start = {inclination, anteversion};
    for (String from : SYSTEMS) {
      for (String to : SYSTEMS) {
        if (!from.equals(to)) {
          double[] back = convert(to, from, convert(from, to, start));
          assertThat(back[0]).isCloseTo(inclination, within(1e-6));
          assertThat(back[1]).isCloseTo(anteversion, within(1e-6));
        }
      }
    }
  }

  @Property(tries = 300)
  @Label("Anatomic inclination is the largest and operative the smallest")
  void inclinationsAreOrdered(
      @ForAll @DoubleRange(min = 1, max = 89) double ri,
      @ForAll @DoubleRange(min = -89, max = 89) double ra) {
    double ai = call("anatomic inclination from radiographic", ri, ra);
    double oi = call("operative inclination from radiographic", ri, ra);
    assertThat(ai).isGreaterThanOrEqualTo(ri - 1e-9);
    assertThat(oi).isLessThanOrEqualTo(ri + 1e-9);
  }

  @Property(tries = 300)
  @Label("Operative anteversion is at least the radiographic one, and retroversion mirrors it")
  void anteversionsAreOrdered(
      @ForAll @DoubleRange(min = 1, max = 89) double ri,
      @ForAll @DoubleRange(min = 0, max = 89) double ra) {
    double oa = call("operative anteversion from radiographic", ri, ra);
    assertThat(oa).isGreaterThanOrEqualTo(ra - 1e-9);
    assertThat(call("operative anteversion from radiographic", ri, -ra)).isEqualTo(-oa);
  }
}
