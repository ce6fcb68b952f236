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

/** A worse marker never makes an infection less likely, on any case. */
@PropertyDefaults(tries = 400, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
class InfectionMarkersTest {

  private static final List<String> STATUS = List.of("not infected", "open", "infected");

  @Provide
  Arbitrary<Worsening> steps() {
    return Arbitraries.of(
        new Worsening.Number("crp", 300, List.of(5, 50)),
        new Worsening.Number("esr", 120, List.of(10, 40)),
        new Worsening.Number("synovial white cells", 100000, List.of(500, 5000)),
        new Worsening.Number("synovial neutrophils", 100, List.of(5, 40)),
        new Worsening.Grade("sinus tract", List.of(false, true)),
        new Worsening.Grade("alpha defensin", List.of("negative", "positive")),
        new Worsening.Grade("leukocyte esterase", List.of("negative", "one plus", "two plus")),
        new Worsening.Grade(
            "culture results", List.of("no growth", "one positive", "two of one organism")),
        new Worsening.Grade("histology", List.of("negative", "positive")),
        new Worsening.Grade("purulence", List.of("none", "present")));
  }

  @Property
  @Label("A worse marker never lowers the points and never clears the hip")
  @LeansOn(
      value = {"PARVIZI-2018", "ICM-2018"},
      known = Known.DERIVED)
  void neverClears(@ForAll long seed, @ForAll("steps") Worsening step) {
    OrdinaryCase given = HardCases.drawn(seed);
    Assume.that(given.get(step.field()) != null);
    Optional<OrdinaryCase> worse = step.of(given, new Draw(seed));
    Assume.that(worse.isPresent());
    Answer before = given.answer();
    Answer after = worse.orElseThrow().answer();
    assertThat(status(after)).isGreaterThanOrEqualTo(status(before));
    // Two cultures of one organism are proof, so the points of a single one are no longer counted.
    if (!after.rows().contains("IN-02")) {
      assertThat(points(after)).isGreaterThanOrEqualTo(points(before));
    }
  }

  private static int points(Answer answer) {
    return Integer.parseInt(answer.calculation("infection score"));
  }

  private static int status(Answer answer) {
    String status = answer.value("infection status");
    boolean isSettled = STATUS.contains(status);
    return STATUS.indexOf(isSettled ? status : "open");
  }
}
