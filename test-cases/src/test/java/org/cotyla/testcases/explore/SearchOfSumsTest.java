package org.cotyla.testcases.explore;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explore.Goal;
import org.cotyla.explore.SmallestChange;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.testcases.generated.RandomCases;
import org.cotyla.testcases.generated.RandomProtocol;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Protocols that once led the search astray. Source: this project's own engine. */
@DisplayName("The search over tables that add up or take the least")
class SearchOfSumsTest {

  @Test
  @DisplayName("takes sums of constants that have no last decimal, such as a third")
  void endlessDecimals() {
    Protocol protocol = RandomProtocol.of(102);
    Engine engine = Engine.of(protocol);
    Recommendation advice = engine.evaluate(RandomCases.of(protocol, new Random(102), 2));
    for (Ranking ranking : protocol.rankings()) {
      Goal goal = new Goal.First(ranking, ranking.options().get(0).name());
      assertThat(SmallestChange.of(engine, advice, goal, 2).end())
          .isNotEqualTo(SmallestChange.End.UNDECIDED);
    }
  }
}
