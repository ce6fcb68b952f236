package org.cotyla.cli.report;

import java.util.List;
import java.util.stream.Collectors;
import org.cotyla.audit.AuditTables;
import org.cotyla.audit.ControlChart;
import org.cotyla.audit.ControlChart.Point;
import org.cotyla.audit.RankingAudit;
import org.cotyla.cli.report.Drawing.Anchor;
import org.cotyla.cli.text.Figures;

/** A control chart of shares by month. */
final class ControlPicture {

  private static final double WIDTH = 328;
  private static final double HEIGHT = 210;
  private static final double LEFT = 36;
  private static final double RIGHT = WIDTH - 6;
  private static final double TOP = 12;
  private static final double BOTTOM = HEIGHT - 26;
  private static final int MOST_LABELS = 5;

  private final Drawing drawing;
  private final List<Point> points;

  private ControlPicture(Drawing drawing, List<Point> points) {
    this.drawing = drawing;
    this.points = points;
  }

  static void draw(Markup markup, String id, RankingAudit part) {
    ControlChart chart = part.byMonth();
    if (chart.points().isEmpty()) {
      markup.leaf("p", "No decision of a known month.", "class", "not-drawn");
      return;
    }
    String title =
        "Control chart of " + AuditTables.rankingName(part.ranking()) + ", first chosen, by month";
    Drawing drawing = Drawing.start(markup, id, WIDTH, HEIGHT, title, inWords(chart));
    ControlPicture picture = new ControlPicture(drawing, chart.points());
    picture.axes();
    picture.limits(chart.centre());
    picture.points();
    drawing.end();
  }

  private static String inWords(ControlChart chart) {
    List<Point> beyond = chart.points().stream().filter(Point::isBeyond).toList();
    return Figures.percent(chart.centre())
        + " over all of "
        + chart.points().size()
        + " months. "
        + (beyond.isEmpty()
            ? "No month is beyond its limits."
            : "Beyond their limits: "
                + beyond.stream()
                    .map(point -> point.name() + " with " + Figures.percent(point.share()))
                    .collect(Collectors.joining(", "))
                + ".");
  }

  private double x(double place) {
    return LEFT + (place + 0.5) / points.size() * (RIGHT - LEFT);
  }

  private static double y(double share) {
    return BOTTOM - share * (BOTTOM - TOP);
  }

  private void axes() {
    for (int percent = 0; percent <= 100; percent += 20) {
      double y = y(percent / 100.0);
      drawing.line(LEFT, y, RIGHT, y, Palette.RULE, 0.6);
      drawing.text(LEFT - 5, y + 3.5, percent + "%", Drawing.SMALL, Palette.QUIET, Anchor.END);
    }
    drawing.line(LEFT, TOP, LEFT, BOTTOM, Palette.LINE, 1.2);
    drawing.line(LEFT, BOTTOM, RIGHT, BOTTOM, Palette.LINE, 1.2);
    int step = (points.size() + MOST_LABELS - 1) / MOST_LABELS;
    for (int i = 0; i < points.size(); i += step) {
      drawing.line(x(i), BOTTOM, x(i), BOTTOM + 4, Palette.LINE, 1);
      drawing.text(
          x(i), BOTTOM + 16, points.get(i).name(), Drawing.SMALL, Palette.QUIET, Anchor.MIDDLE);
    }
  }

  private void limits(double centre) {
    drawing.line(LEFT, y(centre), RIGHT, y(centre), Palette.ACCENT, 1.4);
    for (int i = 0; i < points.size(); i++) {
      Point point = points.get(i);
      drawing.dashed(
          x(i - 0.5), y(point.upper()), x(i + 0.5), y(point.upper()), Palette.AGAINST, 1.2);
      drawing.dashed(
          x(i - 0.5), y(point.lower()), x(i + 0.5), y(point.lower()), Palette.AGAINST, 1.2);
    }
  }

  private void points() {
    for (int i = 1; i < points.size(); i++) {
      drawing.line(
          x(i - 1),
          y(points.get(i - 1).share()),
          x(i),
          y(points.get(i).share()),
          Palette.LINE,
          0.8);
    }
    for (int i = 0; i < points.size(); i++) {
      Point point = points.get(i);
      double y = y(point.share());
      String fill = point.rough() ? Palette.PAPER.hex() : Palette.INK.hex();
      drawing.circle(x(i), y, 2.6, fill, Palette.INK, 1);
      if (point.isBeyond()) {
        drawing.frame(x(i) - 6, y - 6, 12, 12, Palette.INK, 1.6, false);
      }
    }
  }
}
