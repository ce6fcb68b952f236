package org.cotyla.cli.report;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.cli.report.Drawing.Anchor;
import org.cotyla.cli.report.Path.Kind;
import org.cotyla.cli.report.Path.Node;

/** The way from the findings to one option as a drawn graph, read from left to right. */
final class PathPicture {

  private static final double WIDTH = 676;
  private static final double GAP = 22;
  private static final double BETWEEN = 7;
  private static final double SIZE = 9;
  private static final double LINE = 11;
  private static final double PAD = 5;

  private final Sheet sheet;
  private final List<Node> nodes;
  private final Layers layers;
  private final double columnWidth;
  private final Map<Node, Box> boxes = new HashMap<>();

  /** Where a step stands, with its lines. */
  private record Box(
      double x, double y, double height, List<String> name, List<String> value, String rows) {
    double middle() {
      return y + height / 2;
    }
  }

  PathPicture(Sheet sheet, List<Node> nodes) {
    this.sheet = sheet;
    this.nodes = nodes;
    this.layers = new Layers(nodes);
    int columns = layers.columns().size();
    this.columnWidth = Math.min(190, (WIDTH - GAP * (columns - 1)) / columns);
  }

  void draw(String title) {
    double height = layOut();
    int columns = layers.columns().size();
    double width = columns * columnWidth + (columns - 1) * GAP;
    Drawing drawing =
        Drawing.startWithLinks(
            sheet.markup(), sheet.nextPicture(), width + 2, height + 2, title, inWords());
    for (Node node : nodes) {
      for (Node from : node.from()) {
        edge(drawing, from, node);
      }
    }
    nodes.forEach(node -> box(drawing, node));
    drawing.end();
  }

  private double layOut() {
    double tallest = 0;
    for (List<Node> column : layers.columns()) {
      double height = -BETWEEN;
      for (Node node : column) {
        height += measure(node, 0, 0).height() + BETWEEN;
      }
      tallest = Math.max(tallest, height);
    }
    for (int i = 0; i < layers.columns().size(); i++) {
      List<Node> column = layers.columns().get(i);
      double height = column.stream().mapToDouble(node -> measure(node, 0, 0).height()).sum();
      double gap =
          column.size() < 2
              ? 0
              : Math.min(30, Math.max(BETWEEN, (tallest - height) / (column.size() - 1)));
      double y = 1 + (tallest - height - gap * (column.size() - 1)) / 2;
      for (Node node : column) {
        Box box = measure(node, 1 + i * (columnWidth + GAP), y);
        boxes.put(node, box);
        y += box.height() + gap;
      }
    }
    return tallest;
  }

  private Box measure(Node node, double x, double y) {
    double room = columnWidth - 2 * PAD;
    List<String> name = Fit.lines(node.name(), room, SIZE, 3);
    int most = node.kind() == Kind.FINDING ? 2 : 4;
    List<String> value = Fit.lines(node.value(), room * 0.94, SIZE, most);
    String rows =
        node.rows().isEmpty() ? "" : Fit.lines(Path.rows(node, 4), room, SIZE - 0.8, 1).get(0);
    int lines = name.size() + value.size() + (rows.isEmpty() ? 0 : 1);
    return new Box(x, y, lines * LINE + 2 * PAD - 2, name, value, rows);
  }

  private void edge(Drawing drawing, Node from, Node to) {
    Box start = boxes.get(from);
    Box end = boxes.get(to);
    if (start == null || end == null) {
      return;
    }
    double x1 = start.x() + columnWidth;
    double x2 = end.x();
    double bend = Math.min(GAP * 0.8, (x2 - x1) / 2);
    String curve =
        "M "
            + point(x1, start.middle())
            + " C "
            + point(x1 + bend, start.middle())
            + " "
            + point(x2 - bend, end.middle())
            + " "
            + point(x2, end.middle());
    drawing.path(curve, "none", Palette.LINE, 0.8, false);
    drawing.path(
        "M " + point(x2, end.middle()) + " l -5 -2.6 l 0 5.2 z",
        Palette.LINE.hex(),
        Palette.LINE,
        0.4,
        false);
  }

  private static String point(double x, double y) {
    return Drawing.number(x) + " " + Drawing.number(y);
  }

  private void box(Drawing drawing, Node node) {
    Box box = boxes.get(node);
    if (box == null) {
      return;
    }
    boolean finding = node.kind() == Kind.FINDING;
    boolean last = node.kind() == Kind.OPTION;
    drawing.box(
        box.x(),
        box.y(),
        columnWidth,
        box.height(),
        last ? Palette.OPEN : finding ? Palette.TINT : Palette.PAPER,
        last ? Palette.ACCENT : finding ? Palette.RULE : Palette.LINE,
        last ? 2 : 1,
        false);
    double x = box.x() + PAD;
    double y = box.y() + PAD + 7.5;
    y = drawing.lines(x, y, box.name(), SIZE, Palette.QUIET, Anchor.START);
    y += (LINE - SIZE * 1.25) * box.name().size();
    for (String line : box.value()) {
      drawing.bold(x, y, line, SIZE, Palette.INK, Anchor.START);
      y += LINE;
    }
    if (!box.rows().isEmpty()) {
      Optional<String> anchor = node.rows().stream().findFirst().flatMap(sheet::anchor);
      anchor.ifPresent(drawing::startLink);
      drawing.text(x, y, box.rows(), SIZE - 0.8, Palette.ACCENT, Anchor.START);
      anchor.ifPresent(id -> drawing.endLink());
    }
  }

  private String inWords() {
    long findings = nodes.stream().filter(node -> node.kind() == Kind.FINDING).count();
    long decisions = nodes.size() - findings - 1;
    return findings
        + " findings lead over "
        + decisions
        + " decisions to the option. The same in words stands below the picture.";
  }
}
