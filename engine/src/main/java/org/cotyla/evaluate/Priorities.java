package org.cotyla.evaluate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.stream.IntStream;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.value.PossibleValues;

/**
 * Orders rows by the priority of their results: the order in which an output's values are listed.
 */
public final class Priorities {

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

  /** The rows that no certain row goes before, whatever the open data are; highest first. */
  public static List<Firing> contenders(DecisionTable table, List<Firing> fired) {
    List<Firing> sorted = sorted(table, fired);
    List<Firing> strongest = new ArrayList<>();
    for (Firing firing : sorted) {
      if (firing.certain() && strongest.stream().noneMatch(s -> goesBefore(table, s, firing))) {
        strongest.add(firing);
      }
    }
    return sorted.stream()
        .filter(
            firing ->
                strongest.stream().noneMatch(s -> s != firing && goesBefore(table, s, firing)))
        .toList();
  }

  private static boolean goesBefore(DecisionTable table, Firing a, Firing b) {
    for (int i = 0; i < table.outputs().size(); i++) {
      List<String> priorities = table.outputs().get(i).symbol().choices();
      IntSummaryStatistics ours = places(a.results().get(i), priorities);
      IntSummaryStatistics theirs = places(b.results().get(i), priorities);
      if (ours.getMax() < theirs.getMin()) {
        return true;
      }
      if (ours.getMax() != theirs.getMin() || ours.getMin() != theirs.getMax()) {
        return false;
      }
    }
    return a.row().position() < b.row().position();
  }

  /** The highest place that the result can have. */
  private static int place(PossibleValues result, List<String> priorities) {
    return places(result, priorities).getMin();
  }

  private static IntSummaryStatistics places(PossibleValues result, List<String> priorities) {
    IntStream known =
        result.values().isFinite()
            ? result.values().values().stream().mapToInt(v -> priorities.indexOf(v.plain()))
            : IntStream.of(0, -1);
    IntStream nothing = result.orNothing() ? IntStream.of(-1) : IntStream.empty();
    return IntStream.concat(known, nothing)
        .map(place -> place < 0 ? priorities.size() : place)
        .summaryStatistics();
  }
}
