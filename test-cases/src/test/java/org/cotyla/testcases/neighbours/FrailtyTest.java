package org.cotyla.testcases.neighbours;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.ShrinkingMode;
import org.cotyla.testcases.house.Answer;
import org.cotyla.testcases.house.HardCases;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;

/** The protocol says that the shortest operation that holds is best for a frail patient. */
@PropertyDefaults(tries = 400, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
class FrailtyTest {

  /**
   * What an operation costs a patient in time and in protected weight, as the protocol's own
   * reasons have it: 0 is short or carries at once, 3 means a wide exposure or weeks of protected
   * weight; what is not named is in between.
   */
  private static final Map<String, Integer> BURDEN =
      Map.of(
          "new bearing in the retained cup", 0,
          "hemispherical cup", 0,
          "antiprotrusio cage with graft", 0,
          "impaction grafting with cemented cup", 2,
          "cup-cage", 2,
          "custom triflange", 2,
          "distraction with cup and augments", 3);

  @Property
  @Label("More frailty never brings a longer operation")
  @LeansOn(value = "HOUSE", known = Known.HOUSE_CHOICE)
  void neverLonger(@ForAll long seed) {
    OrdinaryCase fit = HardCases.drawn(seed).with("frailty", "fit");
    Answer before = fit.answer();
    Answer after = fit.with("frailty", "frail").answer();
    // Staging answers infection, or that nothing else can be had; frailty has no say in it.
    Assume.that(!after.construct().equals("staged revision"));
    assertThat(burden(after.construct()))
        .as(() -> before.standing("construct") + " then " + after.standing("construct"))
        .isLessThanOrEqualTo(burden(before.construct()));
  }

  private static int burden(String construct) {
    return BURDEN.getOrDefault(construct, 1);
  }
}
