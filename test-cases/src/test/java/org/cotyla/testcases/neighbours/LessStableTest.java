package org.cotyla.testcases.neighbours;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.cotyla.testcases.house.Answer;
import org.cotyla.testcases.house.Draw;
import org.cotyla.testcases.house.HardCases;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;

/** A hip that dislocates more easily is never given less against it, on any case. */
@PropertyDefaults(tries = 600, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
class LessStableTest {

  /** From the least stable to the most; each holds the head better than the one before. */
  private static final List<String> BEARINGS =
      List.of("standard head", "large head", "dual mobility", "constrained liner");

  private static final List<String> RISKS = List.of("low", "raised", "high");

  @Provide
  Arbitrary<Worsening> steps() {
    return Arbitraries.of(Worsening.ofStability());
  }

  @Property(seed = "1911")
  @Label("A higher risk of instability never leads to a smaller head or a less stable bearing")
  @LeansOn(
      value = {"WETTERS-2013", "KUNG-RIES-2007"},
      known = Known.DERIVED)
  void neverLessStable(@ForAll long seed, @ForAll("steps") Worsening step) {
    OrdinaryCase given = HardCases.drawn(seed);
    Optional<OrdinaryCase> worse = step.of(given, new Draw(seed));
    Assume.that(worse.isPresent());
    Answer before = given.answer();
    Answer after = worse.orElseThrow().answer();
    assertThat(RISKS.indexOf(after.value("instability risk")))
        .isGreaterThanOrEqualTo(RISKS.indexOf(before.value("instability risk")));
    assertThat(BEARINGS.indexOf(after.bearing()))
        .as(
            () ->
                step.field()
                    + ": "
                    + before.standing("bearing")
                    + " then "
                    + after.standing("bearing")
                    + "\n"
                    + given)
        .isGreaterThanOrEqualTo(BEARINGS.indexOf(before.bearing()));
  }
}
