package org.cotyla.testcases.neighbours;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import org.cotyla.testcases.house.Answer;
import org.cotyla.testcases.house.HardCases;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;

/** More living bone against the cup never hurts a plain cup, on any case. */
@PropertyDefaults(tries = 400, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
class MoreContactTest {

  private static final String CUP = "hemispherical cup";

  @Property
  @Label("More host-bone contact never lowers a plain cup's points and never rules it out anew")
  @LeansOn(value = "VILLANUEVA-2008", known = Known.DERIVED)
  void neverHurts(@ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int more) {
    OrdinaryCase given = HardCases.drawn(seed);
    String field = given.isInTheatre() ? "host bone contact in theatre" : "host bone contact";
    OrdinaryCase better = given.with(field, Math.min(100, given.number(field) + more));
    Answer before = given.answer();
    Answer after = better.answer();
    assertThat(after.constructPoints(CUP)).isGreaterThanOrEqualTo(before.constructPoints(CUP));
    assertThat(after.constructIsRuledOut(CUP) && !before.constructIsRuledOut(CUP)).isFalse();
  }
}
