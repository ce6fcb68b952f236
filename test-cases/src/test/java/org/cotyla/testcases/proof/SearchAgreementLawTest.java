package org.cotyla.testcases.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.lifecycle.AfterContainer;
import org.cotyla.testcases.generated.RandomProtocol;

/**
 * Claims about random protocols, searched for among all cases and tried case by case: what is true
 * of a case is not proven impossible, a case that is found bears the claim out, and no case is lost
 * by what a search learns.
 */
@PropertyDefaults(edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
class SearchAgreementLawTest {

  private static final int CASES = 300;
  private static final int CLAIMS = 12;

  private static final Tally ONE = new Tally();
  private static final Tally TWO = new Tally();

  @Property(tries = 150)
  @Label("Of one protocol, what is found, proven impossible and smallest agrees with every case")
  void oneProtocol(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    Trial trial =
        new Trial(
            "protocol " + seed, List.of(RandomProtocol.of(seed)), new Random(seed), CASES, ONE);
    trial.run(CLAIMS);
    trial.runCases(4);
  }

  @Property(tries = 80)
  @Label("Of two versions of a protocol that are asked together, the same holds")
  void twoProtocols(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    Random random = new Random(seed);
    Trial trial =
        new Trial(
            "protocols " + seed,
            List.of(RandomProtocol.of(seed), RandomProtocol.changed(seed, random)),
            random,
            CASES,
            TWO);
    trial.run(CLAIMS);
    trial.runCases(4);
  }

  @AfterContainer
  static void tallies() {
    for (Tally tally : List.of(ONE, TWO)) {
      assertThat(tally.found()).as("%s", tally).isGreaterThan(tally.all() / 5);
      assertThat(tally.impossible()).as("%s", tally).isGreaterThan(tally.all() / 10);
      assertThat(tally.undecidedShare()).as("%s", tally).isLessThan(0.02);
      assertThat(tally.foundBothShare()).as("%s", tally).isGreaterThan(0.7);
    }
  }
}
