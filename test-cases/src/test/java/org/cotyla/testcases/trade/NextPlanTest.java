package org.cotyla.testcases.trade;

import static org.cotyla.testcases.trade.Population.everyone;
import static org.cotyla.testcases.trade.Population.proves;

import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The next plans")
class NextPlanTest {

  /** Constructs that fail for the same finding: what sends away from one sends away from both. */
  private static final Map<String, Set<String>> FAILS_ALIKE =
      Map.of(
          "hemispherical cup", Set.of("hemispherical cup", "extra-large cup"),
          "extra-large cup", Set.of("hemispherical cup", "extra-large cup"));

  private static final Predicate<Outcome> HAS_PLAN_B = o -> !o.is("plan b", "nothing");

  @Test
  @DisplayName("Plan B and plan C are other constructs than plan A, and than each other")
  @LeansOn(value = "HOUSE", known = Known.HOUSE_CHOICE)
  void different() {
    proves(everyone(HAS_PLAN_B), 3000, o -> !o.is("plan b", o.construct()));
    proves(everyone(HAS_PLAN_B), 3000, o -> !o.is("plan c", o.construct()));
    proves(everyone(HAS_PLAN_B), 3000, o -> !o.is("plan c", o.values().get("plan b")));
  }

  @Test
  @DisplayName("Plan B does not share the failure that sent away from plan A")
  @LeansOn(value = "HOUSE", known = Known.HOUSE_CHOICE)
  void noSharedFailure() {
    proves(
        everyone(Outcome::isLedByHemisphere),
        1000,
        o -> !FAILS_ALIKE.get(o.construct()).contains(o.values().get("plan b")));
  }

  @Test
  @DisplayName("No plan B or C stands on porous metal that is not to hand")
  @LeansOn(value = "HOUSE", known = Known.HOUSE_CHOICE)
  void toHand() {
    Set<String> porous =
        Set.of("cup with porous metal augments", "cup-cage", "distraction with cup and augments");
    Predicate<Outcome> usesPorous =
        o -> porous.contains(o.values().get("plan b")) || porous.contains(o.values().get("plan c"));
    proves(everyone(o -> o.states("porous metal to hand", false)), 300, usesPorous.negate());
  }

  @Test
  @DisplayName("No plan B is ruled out by the findings that were known when it was made")
  @LeansOn(value = "HOUSE", known = Known.HOUSE_CHOICE)
  void notRuledOut() {
    proves(everyone(HAS_PLAN_B), 3000, o -> !o.ruledOut().contains(o.values().get("plan b")));
  }

  @Test
  @DisplayName("Whatever leads, what sends to the next plan is said")
  @LeansOn(value = "HOUSE", known = Known.HOUSE_CHOICE)
  void whatSends() {
    proves(
        everyone(HAS_PLAN_B),
        3000,
        o -> o.rows().stream().filter(id -> id.startsWith("TB-")).count() >= 2);
  }
}
