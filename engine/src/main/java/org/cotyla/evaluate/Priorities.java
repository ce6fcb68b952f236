package org.cotyla.evaluate;

import java.util.Comparator;
import java.util.List;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/**
 * Orders rows by the priority of their results: the order in which an output's values are listed.
 */
final class Priorities {

  private Priorities() {}

  /**
   * Highest priority first; the first output with an order decides, then the next, then the sheet.
   */
  static List<Firing> sorted(DecisionTable table, List<Firing> fired) {
    Comparator<Firing> order = Comparator.comparingInt(firing -> 0);
    for (int i = 0; i < table.outputs().size(); i++) {
      List<String> priorities = table.outputs().get(i).symbol().choices();
      if (!priorities.isEmpty()) {
        int output = i;
        order = order.thenComparingInt(firing -> place(firing.results().get(output), priorities));
      }
    }
    return fired.stream().sorted(order).toList();
  }

  private static int place(PossibleValues result, List<String> priorities) {
    int place = result.single().map(Value::plain).map(priorities::indexOf).orElse(-1);
    return place < 0 ? priorities.size() : place;
  }
}
