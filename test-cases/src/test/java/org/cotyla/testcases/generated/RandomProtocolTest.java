package org.cotyla.testcases.generated;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import org.cotyla.protocol.Protocol;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class RandomProtocolTest {

  @Test
  @DisplayName("Generated protocols compile, and among them is every hit policy, type and effect")
  void variety() {
    Set<String> seen = new TreeSet<>();
    for (long seed = 0; seed < 300; seed++) {
      Protocol protocol = RandomProtocol.of(seed);
      protocol.decisions().forEach(table -> seen.add(table.hitPolicy().letters()));
      protocol.fields().forEach(field -> seen.add(field.symbol().type().word()));
      protocol.decisions().stream()
          .filter(table -> table.rows().size() > 8)
          .forEach(table -> seen.add("many rows"));
      protocol
          .allRows()
          .forEach(row -> row.vote().ifPresent(vote -> seen.add(vote.effect().word())));
    }
    assertThat(seen)
        .contains("U", "A", "P", "F", "R", "O", "C", "C+", "C<", "C>", "C#")
        .contains("number", "text", "yes/no", "date")
        .contains("favour", "oppose", "rule out", "many rows");
  }

  @Test
  @DisplayName("The same seed gives the same protocol")
  void sameSeed() {
    assertThat(RandomProtocol.sheets(7).draft()).isEqualTo(RandomProtocol.sheets(7).draft());
  }
}
