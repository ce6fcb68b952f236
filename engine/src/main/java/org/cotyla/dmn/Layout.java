package org.cotyla.dmn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.cotyla.dmn.RowOrder.Item;

/**
 * Where everything stands in the diagram, in pixels from the upper left corner: rows in order of
 * need from the bottom to the top, no two elements over each other, no line over an element.
 *
 * @param boxes the elements
 * @param lines the requirements
 * @param width of the whole diagram
 * @param height of the whole diagram
 */
record Layout(List<Box> boxes, List<Line> lines, int width, int height) {

  private static final int BOX_WIDTH = 160;
  private static final int BOX_HEIGHT = 60;
  private static final int GAP = 24;
  private static final int TRACK = 10;
  private static final int ROW = 180;
  private static final int MARGIN = 40;

  /** An element's place. */
  record Box(String id, int x, int y, int width, int height) {}

  /** A requirement's way from what is needed to what needs it. */
  record Line(String need, String node, List<Point> points) {}

  record Point(int x, int y) {}

  Layout {
    boxes = List.copyOf(boxes);
    lines = List.copyOf(lines);
  }

  static Layout of(List<Node> nodes) {
    return new Placing(nodes).layout();
  }

  /** Works the places out. Used once. */
  private static final class Placing {

    private final List<Node> nodes;
    private final List<List<Item>> rows;
    private final List<Map<Item, Integer>> middles = new ArrayList<>();
    private final Map<String, Integer> rowOf = new HashMap<>();
    private final int width;

    Placing(List<Node> nodes) {
      this.nodes = nodes;
      this.rows = RowOrder.of(Rows.of(nodes));
      this.width = rows.stream().mapToInt(Placing::length).max().orElse(0);
      for (List<Item> row : rows) {
        place(row);
      }
    }

    private static int size(Item item) {
      return item.isTrack() ? TRACK : BOX_WIDTH + GAP;
    }

    private static int length(List<Item> row) {
      return row.stream().mapToInt(Placing::size).sum();
    }

    private void place(List<Item> row) {
      int x = MARGIN + (width - length(row)) / 2;
      Map<Item, Integer> middle = new HashMap<>();
      for (Item item : row) {
        middle.put(item, x + size(item) / 2);
        x += size(item);
        if (!item.isTrack()) {
          rowOf.put(item.id(), middles.size());
        }
      }
      middles.add(middle);
    }

    private int top(int row) {
      return MARGIN + (rows.size() - 1 - row) * ROW;
    }

    private int middle(int row, String id, boolean isTrack) {
      return middles.get(row).getOrDefault(new Item(id, isTrack), 0);
    }

    Layout layout() {
      List<Box> boxes =
          nodes.stream()
              .map(
                  node -> {
                    int row = rowOf.getOrDefault(node.id(), 0);
                    int x = middle(row, node.id(), false) - BOX_WIDTH / 2;
                    return new Box(node.id(), x, top(row), BOX_WIDTH, BOX_HEIGHT);
                  })
              .toList();
      List<Line> lines = nodes.stream().flatMap(node -> lines(node).stream()).toList();
      int height = 2 * MARGIN + Math.max(0, rows.size() - 1) * ROW + BOX_HEIGHT;
      return new Layout(boxes, lines, width + 2 * MARGIN, height);
    }

    /** The lines that end at the element, side by side along its lower edge as they come in. */
    private List<Line> lines(Node node) {
      int row = rowOf.getOrDefault(node.id(), 0);
      List<List<Point>> ways = new ArrayList<>();
      List<String> needs =
          node.needs().stream()
              .sorted(Comparator.comparingInt(need -> lastX(way(need, row))))
              .collect(Collectors.toList());
      List<Line> lines = new ArrayList<>();
      int left = middle(row, node.id(), false) - BOX_WIDTH / 2;
      for (String need : needs) {
        List<Point> points = new ArrayList<>(way(need, row));
        int share = BOX_WIDTH * (2 * ways.size() + 1) / (2 * needs.size());
        points.add(new Point(left + share, top(row) + BOX_HEIGHT));
        ways.add(points);
        lines.add(new Line(need, node.id(), List.copyOf(points)));
      }
      return lines;
    }

    private static int lastX(List<Point> way) {
      return way.get(way.size() - 1).x();
    }

    /** From the upper edge of what is needed along its tracks to below the given row. */
    private List<Point> way(String need, int end) {
      int start = rowOf.getOrDefault(need, 0);
      List<Point> points = new ArrayList<>();
      points.add(new Point(middle(start, need, false), top(start)));
      for (int row = start + 1; row < end; row++) {
        int x = middle(row, need, true);
        points.add(new Point(x, top(row) + BOX_HEIGHT + GAP / 2));
        points.add(new Point(x, top(row) - GAP / 2));
      }
      return points;
    }
  }
}
