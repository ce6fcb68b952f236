package org.cotyla.testcases.dmn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.protocol.Protocol;
import org.cotyla.testcases.generated.RandomCases;
import org.cotyla.testcases.generated.RandomProtocol;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.kie.dmn.api.core.DMNResult;

@DisplayName("Exported random protocols in Drools' DMN engine")
class RandomModelsTest {

  private static final int PROTOCOLS = 200;
  private static final int CASES = 8;

  @Test
  @DisplayName("give the same answers wherever no known disagreement is touched")
  void sameAnswers() {
    int same = 0;
    int contradicted = 0;
    Set<KnownDisagreements> met = EnumSet.noneOf(KnownDisagreements.class);
    for (long seed = 0; seed < PROTOCOLS; seed++) {
      Protocol protocol = RandomProtocol.of(seed);
      Engine engine = Engine.of(protocol);
      DroolsModel model = new DroolsModel(protocol);
      assertThat(model.remarks()).as("protocol %d", seed).isEmpty();
      Random random = new Random(seed);
      for (int i = 0; i < CASES; i++) {
        Recommendation advice = engine.evaluate(RandomCases.of(protocol, random, 0));
        if (!advice.faults().isEmpty()) {
          contradicted++;
        } else if (KnownDisagreements.any(advice)) {
          List.of(KnownDisagreements.values()).stream()
              .filter(known -> known.touches(advice))
              .forEach(met::add);
        } else {
          DMNResult theirs = model.run(advice);
          assertThat(SameAnswer.differences(model.export(), advice, theirs))
              .as("protocol %d, case %d: %s", seed, i, advice.findings().data())
              .isEmpty();
          same++;
        }
      }
    }
    assertThat(met).containsExactlyInAnyOrder(KnownDisagreements.values());
    assertThat(contradicted).isPositive();
    assertThat(same).as("most cases are compared").isGreaterThan(PROTOCOLS * CASES / 3);
  }
}
