package org.cotyla.cli.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.cli.report.Drawing.Anchor;
import org.cotyla.protocol.Picture;
import org.cotyla.protocol.Picture.Part;
import org.cotyla.protocol.PictureRole;

/**
 * A point of two numbers against zones: the first zone with a full edge, others with a broken one.
 */
final class ZoneChart {

  private static final double LEGEND_LINE = 15;

  private final Sheet sheet;
  private final Picture picture;
  private final PictureValues values;

  /** A zone whose four sides are known. */
  private record Zone(String label, double left, double right, double bottom, double top) {}

  ZoneChart(Sheet sheet, Picture picture) {
    this.sheet = sheet;
    this.picture = picture;
    this.values = new PictureValues(sheet.scope(), picture);
  }

  /** Nothing is drawn when no zone is known. */
  boolean draw() {
    List<Zone> zones = zones();
    if (zones.isEmpty()) {
      return false;
    }
    Optional<NumberRange> across = values.range(PictureRole.ACROSS);
    Optional<NumberRange> up = values.range(PictureRole.UP);
    boolean placed = across.isPresent() && up.isPresent();
    Axes axes = axes(zones, placed ? across : Optional.empty(), placed ? up : Optional.empty());
    Drawing drawing =
        Drawing.start(
            sheet.markup(),
            sheet.nextPicture(),
            Axes.WIDTH,
            Axes.HEIGHT + zones.size() * LEGEND_LINE,
            picture.title(),
            inWords(zones, placed));
    drawing.box(
        axes.x(zones.get(0).left()),
        axes.y(zones.get(0).top()),
        axes.x(zones.get(0).right()) - axes.x(zones.get(0).left()),
        axes.y(zones.get(0).bottom()) - axes.y(zones.get(0).top()),
        Palette.OPEN);
    axes.draw(drawing, label(PictureRole.ACROSS), label(PictureRole.UP));
    for (Zone zone : zones) {
      zone(drawing, axes, zone, zones.indexOf(zone));
    }
    if (placed) {
      point(drawing, axes, across.get(), up.get());
    } else {
      drawing.text(
          axes.x((axes.left() + axes.right()) / 2),
          axes.y(axes.bottom()) - 8,
          "no point is known, so none is drawn",
          Drawing.SMALL,
          Palette.INK,
          Anchor.MIDDLE);
    }
    drawing.end();
    return true;
  }

  private List<Zone> zones() {
    Map<String, List<Part>> byLabel = new LinkedHashMap<>();
    picture.parts().stream()
        .filter(part -> PictureRole.zoneSides().contains(part.role()))
        .forEach(part -> byLabel.computeIfAbsent(part.label(), key -> new ArrayList<>()).add(part));
    List<Zone> zones = new ArrayList<>();
    byLabel.forEach(
        (label, sides) -> {
          Optional<Double> left = side(sides, PictureRole.ZONE_LEFT);
          Optional<Double> right = side(sides, PictureRole.ZONE_RIGHT);
          Optional<Double> bottom = side(sides, PictureRole.ZONE_BOTTOM);
          Optional<Double> top = side(sides, PictureRole.ZONE_TOP);
          if (left.isPresent() && right.isPresent() && bottom.isPresent() && top.isPresent()) {
            zones.add(new Zone(label, left.get(), right.get(), bottom.get(), top.get()));
          }
        });
    return zones;
  }

  private Optional<Double> side(List<Part> sides, PictureRole role) {
    return sides.stream()
        .filter(part -> part.role() == role)
        .findFirst()
        .flatMap(values::range)
        .filter(NumberRange::isCertain)
        .map(NumberRange::low);
  }

  private static Axes axes(
      List<Zone> zones, Optional<NumberRange> across, Optional<NumberRange> up) {
    double left = zones.stream().mapToDouble(Zone::left).min().orElse(0);
    double right = zones.stream().mapToDouble(Zone::right).max().orElse(1);
    double bottom = zones.stream().mapToDouble(Zone::bottom).min().orElse(0);
    double top = zones.stream().mapToDouble(Zone::top).max().orElse(1);
    left = Math.min(left, across.map(NumberRange::low).orElse(left));
    right = Math.max(right, across.map(NumberRange::high).orElse(right));
    bottom = Math.min(bottom, up.map(NumberRange::low).orElse(bottom));
    top = Math.max(top, up.map(NumberRange::high).orElse(top));
    double besideX = (right - left) * 0.08;
    double besideY = (top - bottom) * 0.14;
    return Axes.around(left - besideX, right + besideX, bottom - besideY, top + besideY);
  }

  private static void zone(Drawing drawing, Axes axes, Zone zone, int number) {
    double x = axes.x(zone.left());
    double y = axes.y(zone.top());
    double width = axes.x(zone.right()) - x;
    drawing.frame(
        x,
        y,
        width,
        axes.y(zone.bottom()) - y,
        number == 0 ? Palette.ACCENT : Palette.INK,
        number == 0 ? 2.2 : 1.3,
        number > 0);
    double legend = Axes.HEIGHT + 4 + number * LEGEND_LINE;
    drawing.frame(
        1,
        legend - 8,
        18,
        9,
        number == 0 ? Palette.ACCENT : Palette.INK,
        number == 0 ? 2.2 : 1.3,
        number > 0);
    String label = Fit.lines(zone.label(), Axes.WIDTH - 30, Drawing.SMALL, 1).get(0);
    drawing.text(26, legend, label, Drawing.SMALL, Palette.INK, Anchor.START);
  }

  private static void point(Drawing drawing, Axes axes, NumberRange across, NumberRange up) {
    double x = axes.x(across.low());
    double y = axes.y(up.high());
    if (across.isCertain() && up.isCertain()) {
      drawing.line(x - 11, y, x + 11, y, Palette.INK, 1.2);
      drawing.line(x, y - 11, x, y + 11, Palette.INK, 1.2);
      drawing.circle(x, y, 5, Palette.INK.hex(), Palette.PAPER, 1.4);
    } else {
      double width = Math.max(2, axes.x(across.high()) - x);
      double height = Math.max(2, axes.y(up.low()) - y);
      drawing.frame(x, y, width, height, Palette.INK, 1.6, true);
      drawing.hatch(x, y, width, height, Palette.LINE);
    }
  }

  private String label(PictureRole role) {
    return picture.part(role).map(Part::label).orElse("");
  }

  private String inWords(List<Zone> zones, boolean placed) {
    StringBuilder words = new StringBuilder();
    words.append(
        placed
            ? "The point lies at "
                + values.inWords(PictureRole.ACROSS)
                + " across ("
                + label(PictureRole.ACROSS)
                + ") and "
                + values.inWords(PictureRole.UP)
                + " up ("
                + label(PictureRole.UP)
                + ")."
            : "No point is known, so none is drawn.");
    for (Zone zone : zones) {
      words
          .append(" Zone ")
          .append(zone.label())
          .append(": ")
          .append(Drawing.number(zone.left()))
          .append(" to ")
          .append(Drawing.number(zone.right()))
          .append(" across, ")
          .append(Drawing.number(zone.bottom()))
          .append(" to ")
          .append(Drawing.number(zone.top()))
          .append(" up.");
    }
    return words.toString();
  }
}
