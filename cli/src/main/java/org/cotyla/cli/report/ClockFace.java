package org.cotyla.cli.report;

import java.util.List;
import java.util.Optional;
import org.cotyla.cli.report.Drawing.Anchor;
import org.cotyla.protocol.Picture;
import org.cotyla.protocol.Picture.Part;
import org.cotyla.protocol.PictureRole;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/**
 * A round opening seen from its front: 12 at the top, the pole in the middle and the rim outside.
 * Equal angles from the pole are equal steps outwards. What is missing is hatched.
 */
final class ClockFace {

  private static final double WIDTH = 328;
  private static final double RADIUS = 96;
  private static final int LINES_AN_HOUR = 8;
  private static final double CENTRE_X = WIDTH / 2;
  private static final double CENTRE_Y = 126;

  private final Sheet sheet;
  private final Picture picture;
  private final PictureValues values;

  ClockFace(Sheet sheet, Picture picture) {
    this.sheet = sheet;
    this.picture = picture;
    this.values = new PictureValues(sheet.scope(), picture);
  }

  void draw() {
    List<ShareBar> bars = ShareBar.of(sheet, picture);
    double height = CENTRE_Y + RADIUS + 34 + ShareBar.height(bars, picture);
    Drawing drawing =
        Drawing.start(
            sheet.markup(), sheet.nextPicture(), WIDTH, height, picture.title(), inWords());
    face(drawing);
    Optional<Double> from = values.certain(PictureRole.SECTOR_FROM);
    Optional<Double> to = values.certain(PictureRole.SECTOR_TO);
    cap(drawing);
    if (from.isPresent() && to.isPresent()) {
      sector(drawing, from.get(), to.get());
    } else {
      drawing.box(CENTRE_X - 74, CENTRE_Y - 22, 148, 34, Palette.PAPER);
      drawing.text(
          CENTRE_X,
          CENTRE_Y - 8,
          "no sector is recorded,",
          Drawing.SMALL,
          Palette.INK,
          Anchor.MIDDLE);
      drawing.text(
          CENTRE_X, CENTRE_Y + 6, "so none is drawn", Drawing.SMALL, Palette.INK, Anchor.MIDDLE);
    }
    ShareBar.draw(drawing, sheet, picture, bars, WIDTH, CENTRE_Y + RADIUS + 38);
    drawing.end();
  }

  private void face(Drawing drawing) {
    drawing.circle(CENTRE_X, CENTRE_Y, RADIUS, Palette.TINT.hex(), Palette.INK, 2.4);
    for (double part : new double[] {1 / 3.0, 2 / 3.0}) {
      drawing.circle(CENTRE_X, CENTRE_Y, RADIUS * part, "none", Palette.RULE, 0.8);
    }
    for (int hour = 1; hour <= 12; hour++) {
      boolean main = hour % 3 == 0;
      double inner = RADIUS + (main ? -7 : -4);
      drawing.line(
          x(hour, inner), y(hour, inner), x(hour, RADIUS), y(hour, RADIUS), Palette.INK, 1);
      drawing.text(
          x(hour, RADIUS + 13),
          y(hour, RADIUS + 13) + 4,
          Integer.toString(hour),
          main ? Drawing.NORMAL : Drawing.SMALL,
          main ? Palette.INK : Palette.QUIET,
          Anchor.MIDDLE);
    }
  }

  /** From one hour to the other in the stated direction; back at the start is the whole round. */
  private void sector(Drawing drawing, double from, double to) {
    boolean anticlockwise = isAnticlockwise();
    double hours = anticlockwise ? from - to : to - from;
    hours = hours <= 0 ? hours + 12 : hours;
    double start = anticlockwise ? to : from;
    double inner = RADIUS * values.certain(PictureRole.INNER_ANGLE).orElse(0.0) / 90;
    int lines = (int) Math.round(hours * LINES_AN_HOUR);
    for (int i = 0; i <= lines; i++) {
      // Fewer lines reach the middle, where they would run into each other.
      double depth = i % 4 == 0 ? 0.12 : i % 2 == 0 ? 0.35 : 0.6;
      double hour = start + hours * i / lines;
      line(drawing, hour, Math.max(inner, RADIUS * depth), RADIUS, Palette.AGAINST, 0.9);
    }
    arc(drawing, start, hours, RADIUS, Palette.PAPER, 4);
    arc(drawing, start, hours, RADIUS, Palette.AGAINST, 1.4);
    if (inner > 0) {
      arc(drawing, start, hours, inner, Palette.AGAINST, 1.4);
    }
    if (hours < 12) {
      line(drawing, start, inner, RADIUS, Palette.AGAINST, 1.6);
      line(drawing, start + hours, inner, RADIUS, Palette.AGAINST, 1.6);
    }
    label(drawing, start + hours / 2, label(PictureRole.SECTOR_FROM));
  }

  private boolean isAnticlockwise() {
    return values
        .value(PictureRole.ANTICLOCKWISE)
        .flatMap(PossibleValues::single)
        .filter(value -> value.equals(Value.of(true)))
        .isPresent();
  }

  private static void line(
      Drawing drawing, double hour, double inner, double outer, Palette colour, double width) {
    drawing.line(x(hour, inner), y(hour, inner), x(hour, outer), y(hour, outer), colour, width);
  }

  private static void arc(
      Drawing drawing, double start, double hours, double radius, Palette colour, double width) {
    StringBuilder path = new StringBuilder();
    int steps = (int) Math.max(2, Math.ceil(hours * 6));
    for (int i = 0; i <= steps; i++) {
      double hour = start + hours * i / steps;
      path.append(i == 0 ? "M " : " L ")
          .append(Drawing.number(x(hour, radius)))
          .append(' ')
          .append(Drawing.number(y(hour, radius)));
    }
    drawing.path(path.toString(), "none", colour, width, false);
  }

  private void cap(Drawing drawing) {
    double radius = RADIUS * values.certain(PictureRole.CAP_ANGLE).orElse(0.0) / 90;
    if (radius <= 0) {
      return;
    }
    drawing.circle(CENTRE_X, CENTRE_Y, radius, Palette.PAPER.hex(), Palette.AGAINST, 1.4);
    for (double offset = -radius + 3; offset < radius; offset += 4) {
      double half = Math.sqrt(radius * radius - offset * offset);
      drawing.line(
          CENTRE_X - half,
          CENTRE_Y + offset,
          CENTRE_X + half,
          CENTRE_Y + offset,
          Palette.AGAINST,
          0.9);
    }
  }

  private void label(Drawing drawing, double hour, String text) {
    if (text.isEmpty()) {
      return;
    }
    double width = Math.min(130, Fit.width(text, Drawing.SMALL) + 6);
    List<String> lines = Fit.lines(text, width, Drawing.SMALL, 3);
    double x = x(hour, RADIUS * 0.62);
    double y = y(hour, RADIUS * 0.62) - (lines.size() - 1) * 6.5;
    drawing.box(x - width / 2, y - 10, width, lines.size() * 13 + 2, Palette.PAPER);
    drawing.lines(x, y, lines, Drawing.SMALL, Palette.INK, Anchor.MIDDLE);
  }

  private String label(PictureRole role) {
    return picture.part(role).map(Part::label).orElse("");
  }

  private String inWords() {
    String sector =
        values.certain(PictureRole.SECTOR_FROM).isPresent()
                && values.certain(PictureRole.SECTOR_TO).isPresent()
            ? "Hatched from "
                + values.inWords(PictureRole.SECTOR_FROM)
                + " to "
                + values.inWords(PictureRole.SECTOR_TO)
                + " o'clock, "
                + (isAnticlockwise() ? "anticlockwise" : "clockwise")
                + ", from "
                + Drawing.number(values.certain(PictureRole.INNER_ANGLE).orElse(0.0))
                + " degrees off the pole to the rim."
            : "No sector is recorded, so none is drawn.";
    double cap = values.certain(PictureRole.CAP_ANGLE).orElse(0.0);
    String floor = cap > 0 ? " Hatched round the pole to " + Drawing.number(cap) + " degrees." : "";
    return sector + floor + ShareBar.inWords(sheet, picture);
  }

  private static double x(double hour, double radius) {
    return CENTRE_X + radius * StrictMath.sin(Math.PI * hour / 6);
  }

  private static double y(double hour, double radius) {
    return CENTRE_Y - radius * StrictMath.cos(Math.PI * hour / 6);
  }
}
