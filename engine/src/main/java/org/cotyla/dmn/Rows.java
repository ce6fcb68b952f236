package org.cotyla.dmn;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * In which row of the diagram each element stands, counted from the bottom: above all that it
 * needs. What needs nothing stands right below the lowest element that needs it.
 */
final class Rows {

  private static final int ELEMENTS_IN_A_ROW = 12;

  private final Map<String, Node> nodes = new LinkedHashMap<>();
  private final Map<String, Integer> levels = new HashMap<>();

  private Rows(List<Node> all) {
    all.forEach(node -> nodes.put(node.id(), node));
  }

  static List<List<Node>> of(List<Node> nodes) {
    return new Rows(nodes).split();
  }

  private List<List<Node>> split() {
    nodes.values().forEach(this::level);
    Map<String, Integer> lowestUser = new HashMap<>();
    for (Node node : nodes.values()) {
      node.needs().forEach(need -> lowestUser.merge(need, level(node), Math::min));
    }
    Map<Integer, List<Node>> byLevel = new TreeMap<>();
    for (Node node : nodes.values()) {
      int level = node.needs().isEmpty() ? lowestUser.getOrDefault(node.id(), 1) - 1 : level(node);
      byLevel.computeIfAbsent(level, none -> new ArrayList<>()).add(node);
    }
    List<List<Node>> rows = new ArrayList<>();
    byLevel.values().forEach(level -> rows.addAll(evenly(level)));
    return rows;
  }

  /** The protocol's steps go in no circle, so this ends; its depth is that of the protocol. */
  private int level(Node node) {
    Integer known = levels.get(node.id());
    if (known != null) {
      return known;
    }
    int level = 0;
    for (String need : node.needs()) {
      Node needed = nodes.get(need);
      level = needed == null ? level : Math.max(level, level(needed) + 1);
    }
    levels.put(node.id(), level);
    return level;
  }

  private static List<List<Node>> evenly(List<Node> level) {
    int count = (level.size() + ELEMENTS_IN_A_ROW - 1) / ELEMENTS_IN_A_ROW;
    List<List<Node>> rows = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      rows.add(level.subList(i * level.size() / count, (i + 1) * level.size() / count));
    }
    return rows;
  }
}
