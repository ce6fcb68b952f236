package org.cotyla.testcases.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.testcases.trade.Population.everyone;
import static org.cotyla.testcases.trade.Population.proves;
import static org.cotyla.testcases.trade.Population.share;

import java.util.List;
import java.util.function.Predicate;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Where graft, oblong cups and cages have their place")
class GraftAndCageTest {

  private static final String ALLOGRAFT = "structural allograft with cup";
  private static final String IMPACTION = "impaction grafting with cemented cup";
  private static final String OBLONG = "oblong cup";
  private static final String CAGE = "antiprotrusio cage with graft";

  private static final Predicate<Outcome> NO_POROUS_METAL =
      o -> o.states("porous metal to hand", false);
  private static final Predicate<Outcome> CONTAINED = o -> o.states("defect contained", true);
  private static final Predicate<Outcome> BY_IMPACTION = o -> o.isLedBy(IMPACTION);

  @Test
  @DisplayName("Structural allograft is not advised for the worst class")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void allograftInTheWorstClass() {
    proves(everyone(o -> o.isClass("3B")), 300, o -> o.ruledOut().contains(ALLOGRAFT));
  }

  @Test
  @DisplayName(
      "Structural allograft can succeed in 3A, and leads there where metal is out of reach")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void allograftIn3A() {
    List<Outcome> led = everyone(o -> o.isLedBy(ALLOGRAFT));
    proves(led, 5, o -> o.isClass("3A"));
    proves(led, 5, NO_POROUS_METAL);
  }

  @Test
  @DisplayName("An oblong cup comes into play only in a contained, oblong 3A")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void oblongCup() {
    Predicate<Outcome> inPlay = o -> !o.ruledOut().contains(OBLONG);
    proves(
        everyone(inPlay),
        10,
        CONTAINED.and(o -> o.isClass("3A") && o.states("cavity shape", "oblong")));
  }

  @Test
  @DisplayName("Impaction grafting never comes first in 3B")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void impactionIn3B() {
    proves(everyone(o -> o.isClass("3B")), 300, BY_IMPACTION.negate());
  }

  @Test
  @DisplayName("In class 3 impaction grafting leads only where the cavity is contained")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void impactionInClass3() {
    proves(everyone(BY_IMPACTION.and(o -> o.isClass("3A", "3B"))), 5, CONTAINED);
  }

  @Test
  @DisplayName(
      "In an ordinary mix impaction grafting leads in 2A to contained 3A, never in class 1")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void impactionInClass1() {
    assertThat(Population.ordinary()).anyMatch(BY_IMPACTION);
    proves(
        Population.ordinary().stream().filter(o -> o.isClass("1")).toList(),
        500,
        BY_IMPACTION.negate());
  }

  @Test
  @DisplayName("It leads more often where costly implants are out of reach")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void impactionWithoutPorousMetal() {
    Predicate<Outcome> fitting =
        o -> o.isClass("2A", "2B", "2C", "3A") && o.states("bone bank", true);
    double without = share(everyone(fitting.and(NO_POROUS_METAL)), BY_IMPACTION);
    double with = share(everyone(fitting.and(NO_POROUS_METAL.negate())), BY_IMPACTION);
    assertThat(without).isGreaterThan(2 * with);
  }

  @Test
  @DisplayName("A cage without ingrowth leads for the elderly, the frail, in tumour, or for want")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void cage() {
    Predicate<Outcome> elderly =
        o -> o.findings().number("life expectancy") < 5 || o.findings().number("age") >= 75;
    Predicate<Outcome> frail = o -> o.states("frailty", "frail") || o.states("demand", "low");
    proves(
        everyone(o -> o.isLedBy(CAGE)),
        50,
        elderly.or(frail).or(o -> o.is("bone biology", "tumour")).or(NO_POROUS_METAL));
  }

  @Test
  @DisplayName("In an ordinary mix no cage without ingrowth leads in sound bone of class 1 to 2B")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void cageInSoundBone() {
    Predicate<Outcome> sound = o -> o.isClass("1", "2A", "2B") && !o.is("bone biology", "tumour");
    proves(Population.ordinary().stream().filter(sound).toList(), 2000, o -> !o.isLedBy(CAGE));
  }

  @Test
  @DisplayName("Particulate graft carries only inside impaction grafting, and never in 3B")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void particulateGraft() {
    proves(everyone(o -> o.rows().contains("GR-08")), 20, BY_IMPACTION.and(o -> !o.isClass("3B")));
  }
}
