package org.cotyla.cli.report;

import java.util.List;
import java.util.Locale;

/** One picture as SVG, with a title and a description for those who do not see it. */
final class Drawing {

  /** The size of the small print in pictures. */
  static final double SMALL = 10.5;

  static final double NORMAL = 12;

  private final Markup markup;

  private Drawing(Markup markup) {
    this.markup = markup;
  }

  /** Starts a picture of that size. */
  static Drawing start(
      Markup markup, String id, double width, double height, String title, String description) {
    return start("img", markup, id, width, height, title, description);
  }

  /** Starts a picture with links in it, which a plain image must not have. */
  static Drawing startWithLinks(
      Markup markup, String id, double width, double height, String title, String description) {
    return start("group", markup, id, width, height, title, description);
  }

  private static Drawing start(
      String role,
      Markup markup,
      String id,
      double width,
      double height,
      String title,
      String description) {
    // The PDF library takes only whole numbers here.
    double wide = Math.ceil(width);
    double high = Math.ceil(height);
    markup.start(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "role",
        role,
        "aria-labelledby",
        id + "-title " + id + "-text",
        "width",
        number(wide),
        "height",
        number(high),
        "viewBox",
        "0 0 " + number(wide) + " " + number(high));
    markup.leaf("title", title, "id", id + "-title");
    markup.leaf("desc", description, "id", id + "-text");
    return new Drawing(markup);
  }

  void end() {
    markup.end();
  }

  Drawing line(double x1, double y1, double x2, double y2, Palette colour, double width) {
    line(x1, y1, x2, y2, colour, width, "");
    return this;
  }

  Drawing dashed(double x1, double y1, double x2, double y2, Palette colour, double width) {
    line(x1, y1, x2, y2, colour, width, "4 3");
    return this;
  }

  private void line(
      double x1, double y1, double x2, double y2, Palette colour, double width, String dashes) {
    markup.start("line", "x1", number(x1), "y1", number(y1), "x2", number(x2), "y2", number(y2));
    stroke(colour, width, dashes);
    markup.end();
  }

  Drawing box(double x, double y, double width, double height, Palette fill) {
    rectangle(x, y, width, height, fill.hex());
    markup.end();
    return this;
  }

  Drawing box(
      double x,
      double y,
      double width,
      double height,
      Palette fill,
      Palette edge,
      double edgeWidth,
      boolean dashed) {
    rectangle(x, y, width, height, fill.hex());
    stroke(edge, edgeWidth, dashed ? "4 3" : "");
    markup.end();
    return this;
  }

  /** Only its edge, so that what lies below is seen. */
  Drawing frame(
      double x, double y, double width, double height, Palette edge, double line, boolean dashed) {
    rectangle(x, y, width, height, "none");
    stroke(edge, line, dashed ? "5 3" : "");
    markup.end();
    return this;
  }

  private void rectangle(double x, double y, double width, double height, String fill) {
    markup.start(
        "rect",
        "x",
        number(x),
        "y",
        number(y),
        "width",
        number(width),
        "height",
        number(height),
        "fill",
        fill);
  }

  /** Slanted lines inside a box. */
  Drawing hatch(double x, double y, double width, double height, Palette colour) {
    for (double start = 4 - height; start < width; start += 4) {
      double left = Math.max(0, start);
      double right = Math.min(width, start + height);
      if (right > left) {
        line(
            x + left,
            y + height - (left - start),
            x + right,
            y + height - (right - start),
            colour,
            0.9);
      }
    }
    return this;
  }

  Drawing circle(double x, double y, double radius, String fill, Palette edge, double width) {
    markup.start("circle", "cx", number(x), "cy", number(y), "r", number(radius), "fill", fill);
    stroke(edge, width, "");
    markup.end();
    return this;
  }

  Drawing path(String data, String fill, Palette edge, double width, boolean dashed) {
    markup.start("path", "d", data, "fill", fill, "stroke-linejoin", "round");
    stroke(edge, width, dashed ? "4 3" : "");
    markup.end();
    return this;
  }

  private void stroke(Palette colour, double width, String dashes) {
    markup.attribute("stroke", colour.hex()).attribute("stroke-width", number(width));
    if (!dashes.isEmpty()) {
      markup.attribute("stroke-dasharray", dashes);
    }
  }

  /** Where a text stands against its point. */
  enum Anchor {
    START,
    MIDDLE,
    END;

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  Drawing text(double x, double y, String text, double size, Palette colour, Anchor anchor) {
    return text(x, y, text, size, colour, anchor, false);
  }

  Drawing bold(double x, double y, String text, double size, Palette colour, Anchor anchor) {
    return text(x, y, text, size, colour, anchor, true);
  }

  private Drawing text(
      double x, double y, String text, double size, Palette colour, Anchor anchor, boolean bold) {
    markup.start(
        "text",
        "x",
        number(x),
        "y",
        number(y),
        "font-size",
        number(size),
        "font-family",
        "Cotyla, sans-serif",
        "fill",
        colour.hex(),
        "text-anchor",
        anchor.word());
    if (bold) {
      markup.attribute("font-weight", "bold");
    }
    markup.text(text).end();
    return this;
  }

  /** Lines below each other; gives the base line after the last. */
  double lines(double x, double y, List<String> lines, double size, Palette colour, Anchor anchor) {
    double base = y;
    for (String line : lines) {
      text(x, base, line, size, colour, anchor);
      base += size * 1.25;
    }
    return base;
  }

  /** What is drawn until the link's end leads to a place in the document. */
  Drawing startLink(String id) {
    markup.start("a", "href", "#" + id);
    return this;
  }

  Drawing endLink() {
    markup.end();
    return this;
  }

  /** A number of a drawing: at most two decimals, the same on every machine. */
  static String number(double number) {
    double rounded = Math.round(number * 100) / 100.0;
    return rounded == Math.rint(rounded) ? Long.toString((long) rounded) : Double.toString(rounded);
  }
}
