package org.cotyla.testcases.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.testcases.trade.Population.proves;

import java.util.List;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("An ordinary mix of revisions is mostly plain work")
class OrdinaryMixTest {

  private static List<Outcome> ordinary(String... classes) {
    return Population.ordinary().stream().filter(outcome -> outcome.isClass(classes)).toList();
  }

  @Test
  @DisplayName("More than nine in ten of an ordinary mix are led by a hemispherical cup")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void nineInTen() {
    assertThat(Population.ordinary()).hasSize(OrdinaryMix.SIZE);
    assertThat(Population.share(Population.ordinary(), Outcome::isLedByHemisphere))
        .isGreaterThan(0.9);
  }

  @Test
  @DisplayName("That is the protocol and not the mix: 1, 2A and 2B nearly all, class 3 hardly any")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void notTheMix() {
    for (String mild : List.of("1", "2A", "2B")) {
      assertThat(ordinary(mild)).hasSizeGreaterThan(500);
      assertThat(Population.share(ordinary(mild), Outcome::isLedByHemisphere))
          .as("share of class %s", mild)
          .isGreaterThan(0.95);
    }
    assertThat(ordinary("3A", "3B")).hasSizeGreaterThan(100);
    assertThat(Population.share(ordinary("3A", "3B"), Outcome::isLedByHemisphere)).isLessThan(0.1);
  }

  @Test
  @DisplayName("Classes 1, 2A and 2B are straightforward: only radiation and tumour lead elsewhere")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void straightforward() {
    List<Outcome> otherwise =
        ordinary("1", "2A", "2B").stream().filter(o -> !o.isLedByHemisphere()).toList();
    proves(
        otherwise, 10, o -> o.is("bone biology", "irradiated") || o.is("bone biology", "tumour"));
  }

  @Test
  @DisplayName("The class that is drawn is nearly always the class that the protocol reads")
  @LeansOn(value = "HOUSE", known = Known.HOUSE_CHOICE)
  void mixIsAsStated() {
    assertThat(share("1")).isBetween(0.27, 0.33);
    assertThat(share("2A")).isBetween(0.27, 0.33);
    assertThat(share("2B")).isBetween(0.25, 0.31);
    assertThat(share("2C")).isBetween(0.04, 0.08);
    assertThat(share("3A")).isBetween(0.025, 0.055);
    assertThat(share("3B")).isBetween(0.01, 0.03);
  }

  private static double share(String defectClass) {
    return Population.share(Population.ordinary(), outcome -> outcome.isClass(defectClass));
  }

  @Test
  @DisplayName("About half of the cup on living bone is the aim: below it a plain cup hardly leads")
  @LeansOn(value = "COMMON-PRACTICE", known = Known.COMMON_PRACTICE)
  void halfOnLivingBone() {
    List<Outcome> led = Population.ordinary().stream().filter(Outcome::isLedByHemisphere).toList();
    assertThat(Population.share(led, outcome -> outcome.contact() >= 50)).isGreaterThan(0.98);
    proves(
        Population.everyone(o -> o.isLedByHemisphere() && o.contact() < 50),
        10,
        outcome -> outcome.rows().contains("CA-28"));
  }
}
