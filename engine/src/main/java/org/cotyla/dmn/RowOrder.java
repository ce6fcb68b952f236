package org.cotyla.dmn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The order of what stands in each row: elements, and tracks on which the lines of one element pass
 * rows that it does not end in. Everything moves to the middle of what it is joined to, which
 * leaves few crossings. The same model is always ordered in the same way.
 */
final class RowOrder {

  private static final int SWEEPS = 24;

  /** A place in a row: an element, or the track of an element's lines. */
  record Item(String id, boolean isTrack) {}

  private final List<List<Item>> rows = new ArrayList<>();
  private final Map<String, Integer> rowOf = new HashMap<>();
  private final List<Map<Item, Set<Item>>> below = new ArrayList<>();
  private final List<Map<Item, Set<Item>>> above = new ArrayList<>();

  private RowOrder(List<List<Node>> nodes) {
    for (List<Node> row : nodes) {
      List<Item> items = new ArrayList<>();
      row.forEach(node -> items.add(new Item(node.id(), false)));
      row.forEach(node -> rowOf.put(node.id(), rows.size()));
      rows.add(items);
      below.add(new LinkedHashMap<>());
      above.add(new LinkedHashMap<>());
    }
    nodes.forEach(row -> row.forEach(this::join));
  }

  /** The items of each row from left to right. */
  static List<List<Item>> of(List<List<Node>> rows) {
    RowOrder order = new RowOrder(rows);
    for (int i = 0; i < SWEEPS; i++) {
      order.sweep(i % 2 == 0);
    }
    return order.rows;
  }

  private void join(Node node) {
    int end = row(node.id());
    for (String need : node.needs()) {
      Item before = new Item(need, false);
      for (int row = row(need) + 1; row < end; row++) {
        Item track = new Item(need, true);
        if (!rows.get(row).contains(track)) {
          rows.get(row).add(track);
        }
        join(before, track, row);
        before = track;
      }
      join(before, new Item(node.id(), false), end);
    }
  }

  private int row(String id) {
    return rowOf.getOrDefault(id, 0);
  }

  private void join(Item lower, Item upper, int upperRow) {
    below.get(upperRow).computeIfAbsent(upper, none -> new LinkedHashSet<>()).add(lower);
    above.get(upperRow - 1).computeIfAbsent(lower, none -> new LinkedHashSet<>()).add(upper);
  }

  private void sweep(boolean upwards) {
    for (int i = 1; i < rows.size(); i++) {
      int row = upwards ? i : rows.size() - 1 - i;
      int fixed = upwards ? row - 1 : row + 1;
      order(row, places(rows.get(fixed)), upwards ? below.get(row) : above.get(row));
    }
  }

  /** Places as shares of the row's length, so that long and short rows compare. */
  private static Map<Item, Double> places(List<Item> row) {
    Map<Item, Double> places = new HashMap<>();
    for (Item item : row) {
      places.put(item, (places.size() + 0.5) / row.size());
    }
    return places;
  }

  private void order(int row, Map<Item, Double> fixed, Map<Item, Set<Item>> joined) {
    Map<Item, Double> own = places(rows.get(row));
    Map<Item, Double> wanted = new HashMap<>();
    for (Item item : rows.get(row)) {
      double stays = own.getOrDefault(item, 0.0);
      wanted.put(
          item,
          joined.getOrDefault(item, Set.of()).stream()
              .mapToDouble(other -> fixed.getOrDefault(other, stays))
              .average()
              .orElse(stays));
    }
    rows.get(row).sort(Comparator.comparingDouble(item -> wanted.getOrDefault(item, 0.0)));
  }
}
