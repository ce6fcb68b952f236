package org.cotyla.cli.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.cotyla.cli.report.Path.Kind;
import org.cotyla.cli.report.Path.Node;

/**
 * The steps of a path in columns, so that every line leads to the right: the option last, and each
 * step just before the earliest that reads it. Within a column, steps stand near those that they
 * lead to.
 */
final class Layers {

  private static final int ROUNDS = 12;

  private final List<List<Node>> columns = new ArrayList<>();
  private final Map<Node, Set<Node>> to = new HashMap<>();
  private final Map<Node, Double> place = new HashMap<>();

  Layers(List<Node> nodes) {
    Map<Node, Integer> fromEnd = new HashMap<>();
    for (Node node : nodes) {
      node.from()
          .forEach(source -> to.computeIfAbsent(source, key -> new LinkedHashSet<>()).add(node));
    }
    nodes.forEach(node -> distance(node, fromEnd));
    int last = fromEnd.values().stream().max(Integer::compare).orElse(0);
    for (int i = 0; i <= last; i++) {
      columns.add(new ArrayList<>());
    }
    nodes.forEach(node -> columns.get(last - fromEnd.getOrDefault(node, 0)).add(node));
    columns.forEach(this::number);
    for (int round = 0; round < ROUNDS; round++) {
      sort(round % 2 == 0);
    }
  }

  /** How many lines lie between the step and the end, on the longest way. */
  private int distance(Node node, Map<Node, Integer> known) {
    Integer earlier = known.get(node);
    if (earlier != null) {
      return earlier;
    }
    int most = 0;
    for (Node next : to.getOrDefault(node, Set.of())) {
      most = Math.max(most, 1 + distance(next, known));
    }
    known.put(node, most);
    return most;
  }

  private void sort(boolean backwards) {
    List<List<Node>> order = new ArrayList<>(columns);
    if (backwards) {
      java.util.Collections.reverse(order);
    }
    for (List<Node> column : order) {
      Map<Node, Double> mean = new HashMap<>();
      for (Node node : column) {
        Set<Node> others = backwards ? to.getOrDefault(node, Set.of()) : node.from();
        double own = place.getOrDefault(node, 0.0);
        mean.put(
            node,
            others.stream()
                .mapToDouble(other -> place.getOrDefault(other, 0.0))
                .average()
                .orElse(own));
      }
      // The sort is stable, so that steps with one mean keep the order of the protocol.
      column.sort(Comparator.comparingDouble(node -> mean.getOrDefault(node, 0.0)));
      number(column);
    }
  }

  private void number(List<Node> column) {
    for (int i = 0; i < column.size(); i++) {
      place.put(column.get(i), (i + 0.5) / column.size());
    }
  }

  List<List<Node>> columns() {
    return columns;
  }

  /** The most steps that stand in one column; findings are lower than other steps. */
  double tallest(double finding, double other) {
    return columns.stream()
        .mapToDouble(
            column ->
                column.stream()
                    .mapToDouble(node -> node.kind() == Kind.FINDING ? finding : other)
                    .sum())
        .max()
        .orElse(0);
  }
}
