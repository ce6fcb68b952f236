package org.cotyla.testcases.gaps;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Set;
import org.cotyla.evaluate.Engine;
import org.cotyla.protocol.Protocol;
import org.cotyla.testcases.house.House;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Gaps and overlaps by Drools' own analysis of the exported tables")
class GapsAndOverlapsTest {

  private static final int PROTOCOLS = 250;
  private static Tally house;
  private static Tally plain;

  @BeforeAll
  static void compareAll() {
    Engine engine = House.engine();
    house = new Tally().add(engine, DroolsAnalysis.withConstantsWrittenOut(engine.protocol()));
    plain = new Tally();
    for (long seed = 0; seed < PROTOCOLS; seed++) {
      Protocol protocol = PlainTables.of(seed);
      plain.add(Engine.of(protocol), DroolsAnalysis.of(protocol));
    }
  }

  @Test
  @DisplayName("are those that check finds in the house protocol, or their difference is known")
  void house() {
    assertThat(house.unexplained()).isEmpty();
    assertThat(house.undecided()).isZero();
    assertThat(house.analysed()).as("%d tables", house.tables()).isGreaterThan(15);
  }

  @Test
  @DisplayName("are those that check finds in small tables, or their difference is known")
  void plain() {
    assertThat(plain.unexplained()).isEmpty();
    assertThat(plain.undecided()).isZero();
    assertThat(plain.analysed()).as("tables").isGreaterThan(PROTOCOLS);
    assertThat(plain.gaps()).as("gaps that both see").isGreaterThan(PROTOCOLS);
    assertThat(plain.overlaps()).as("overlaps that both see").isGreaterThan(PROTOCOLS);
  }

  @Test
  @DisplayName("differ in every way that is known, and each is met")
  void everyKindIsMet() {
    Set<KnownDifferences> met = EnumSet.copyOf(plain.met());
    met.addAll(house.met());
    assertThat(met).containsExactlyInAnyOrder(KnownDifferences.values());
  }
}
