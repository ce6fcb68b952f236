package org.cotyla.testcases.differential;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Case;
import org.cotyla.protocol.Protocol;
import org.cotyla.testcases.differential.PlainInterpreter.World;
import org.cotyla.testcases.generated.RandomCases;
import org.cotyla.testcases.generated.RandomProtocol;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class CompleteCasesTest {

  private static final int PROTOCOLS = 400;
  private static final int CASES = 15;

  @Test
  @DisplayName("Complete cases: every firing, result and ranking is that of the plain interpreter")
  void completeCases() {
    int faulty = 0;
    for (long seed = 0; seed < PROTOCOLS; seed++) {
      Protocol protocol = RandomProtocol.of(seed);
      Engine engine = Engine.of(protocol);
      Random random = new Random(seed);
      for (int i = 0; i < CASES; i++) {
        Case given = RandomCases.of(protocol, random, 0);
        Recommendation advice = engine.evaluate(given);
        List<World> worlds =
            PlainInterpreter.run(
                protocol, PlainData.completions(advice, field -> List.of(), 1).get(0));
        long protocolSeed = seed;
        Agreement agreement = new Agreement(() -> "protocol " + protocolSeed + ", " + given);
        boolean fault = worlds.get(0).decisions().values().stream().anyMatch(d -> d.isFault());
        if (fault) {
          faulty++;
          worlds.forEach(world -> agreement.inside(advice, world));
          assertThat(advice.faults()).isNotEmpty();
        } else {
          assertThat(worlds).hasSize(1);
          agreement.same(advice, worlds.get(0));
        }
      }
    }
    assertThat(faulty)
        .as("contradictions are generated, and are not the rule")
        .isBetween(100, PROTOCOLS * CASES / 2);
  }
}
