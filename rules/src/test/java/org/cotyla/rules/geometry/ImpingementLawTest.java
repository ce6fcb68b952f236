package org.cotyla.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.rules.geometry.Geometry.call;

import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** Component impingement only: no bone, no soft tissue. All numbers are derived. */
@Label("Laws of motion until the neck meets the rim")
class ImpingementLawTest {

  private static final String FLEXION = "flexion to impingement";
  private static final String EXTENSION = "extension to impingement";
  private static final String INTERNAL = "internal rotation at 90 flexion to impingement";
  private static final String EXTERNAL = "external rotation to impingement";

  @Property(tries = 1000)
  @Label("The neck is free just before each limit and in the rim just beyond it")
  void limitsAreContacts(
      @ForAll @DoubleRange(min = 30, max = 60) double ri,
      @ForAll @DoubleRange(min = -5, max = 35) double ra,
      @ForAll @DoubleRange(min = -10, max = 40) double version,
      @ForAll @DoubleRange(min = 120, max = 145) double neckShaft,
      @ForAll @DoubleRange(min = 24, max = 44) double head,
      @ForAll @DoubleRange(min = 9, max = 14) double neck) {
    RimModel model = new RimModel(ri, ra, version, neckShaft, head, neck);
    double[] numbers = {ri, ra, version, neckShaft, head, neck};
    contactAt(call(FLEXION, numbers), turn -> model.clearance(turn, 0));
    contactAt(call(EXTENSION, numbers), turn -> model.clearance(-turn, 0));
    contactAt(call(INTERNAL, numbers), turn -> model.clearance(90, turn));
    contactAt(call(EXTERNAL, numbers), turn -> model.clearance(0, -turn));
  }

  @Property(tries = 1000)
  @Label("More version of cup or stem gives flexion and internal rotation, takes the others")
  void versionTrades(
      @ForAll @DoubleRange(min = 35, max = 50) double ri,
      @ForAll @DoubleRange(min = 5, max = 25) double ra,
      @ForAll @DoubleRange(min = 5, max = 25) double version,
      @ForAll @DoubleRange(min = 28, max = 40) double head) {
    double[] here = {ri, ra, version, 135, head, 12};
    double[] moreCup = {ri, ra + 1, version, 135, head, 12};
    double[] moreStem = {ri, ra, version + 1, 135, head, 12};
    for (double[] more : new double[][] {moreCup, moreStem}) {
      assertThat(call(FLEXION, more)).isGreaterThan(call(FLEXION, here));
      assertThat(call(INTERNAL, more)).isGreaterThan(call(INTERNAL, here));
      assertThat(call(EXTENSION, more)).isLessThan(call(EXTENSION, here));
      assertThat(call(EXTERNAL, more)).isLessThan(call(EXTERNAL, here));
    }
  }

  private static void contactAt(double limit, DoubleUnaryOperator clearance) {
    if (limit == 0) {
      assertThat(clearance.applyAsDouble(0)).isLessThan(1e-6);
      return;
    }
    for (double turn = 0; turn < limit - 0.001; turn += 1) {
      assertThat(clearance.applyAsDouble(turn)).isPositive();
    }
    assertThat(clearance.applyAsDouble(limit - 0.001)).isPositive();
    if (limit < 180) {
      assertThat(clearance.applyAsDouble(limit + 0.001)).isNegative();
    }
  }
}
