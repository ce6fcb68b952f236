package org.cotyla.dmn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.cotyla.dmn.Layout.Box;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The diagram of an exported model")
class LayoutTest {

  /** Elements of which each needs a few of those before it. */
  private static List<Node> random(long seed) {
    Random random = new Random(seed);
    List<Node> nodes = new ArrayList<>();
    for (int i = 0; i < 120; i++) {
      Set<String> needs = new LinkedHashSet<>();
      for (int k = 0; i > 20 && k < 1 + random.nextInt(5); k++) {
        needs.add("n" + random.nextInt(i));
      }
      nodes.add(new Node.Ranked("n" + i, "n" + i, null, List.of(), needs));
    }
    return nodes;
  }

  @Test
  @DisplayName("has no two elements over each other, and whatever needs something stands above it")
  void noOverlaps() {
    for (long seed = 0; seed < 20; seed++) {
      Layout layout = Layout.of(random(seed));
      assertThat(layout.boxes()).hasSize(120);
      for (Box one : layout.boxes()) {
        assertThat(layout.boxes())
            .as("seed %d: %s", seed, one)
            .noneMatch(other -> !other.equals(one) && overlap(one, other));
      }
      layout.lines().forEach(line -> assertThat(rises(line)).as("%s", line).isTrue());
    }
  }

  private static boolean overlap(Box a, Box b) {
    return a.x() < b.x() + b.width()
        && b.x() < a.x() + a.width()
        && a.y() < b.y() + b.height()
        && b.y() < a.y() + a.height();
  }

  private static boolean rises(Layout.Line line) {
    for (int i = 1; i < line.points().size(); i++) {
      if (line.points().get(i).y() >= line.points().get(i - 1).y()) {
        return false;
      }
    }
    return true;
  }
}
