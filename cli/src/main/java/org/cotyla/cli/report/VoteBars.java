package org.cotyla.cli.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.cotyla.cli.report.Drawing.Anchor;
import org.cotyla.cli.text.Words;
import org.cotyla.evaluate.Contribution;
import org.cotyla.evaluate.Points;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.value.Value;

/**
 * Points for and against a few options: to the right of a common line what speaks for, to the left
 * what speaks against, one piece for each row.
 */
final class VoteBars {

  private static final double WIDTH = 328;
  private static final double MARGIN = 14;
  private static final double BAR = 13;
  private static final double TITLE_LINE = 14.5;
  private static final double STEP = 21;

  /** Bold letters are wider than those that the measure is made for. */
  private static final double BOLD = 1.08;

  private final List<RankedOption> options;
  private final double least;
  private final double most;

  VoteBars(List<RankedOption> options) {
    this.options = options;
    double low = 0;
    double high = 1;
    for (RankedOption option : options) {
      low = Math.min(low, sum(option, -1));
      high = Math.max(high, sum(option, 1));
    }
    this.least = low;
    this.most = high;
  }

  private static double sum(RankedOption option, int sign) {
    return option.votes().stream()
        .map(Contribution::points)
        .filter(points -> points.signum() == sign)
        .mapToDouble(Number::doubleValue)
        .sum();
  }

  void draw(Sheet sheet, String title) {
    double height = 18;
    for (RankedOption option : options) {
      height += name(option).size() * TITLE_LINE + BAR + STEP - 6;
    }
    Drawing drawing =
        Drawing.start(sheet.markup(), sheet.nextPicture(), WIDTH, height, title, inWords());
    double y = 14;
    for (RankedOption option : options) {
      y = option(drawing, option, y);
    }
    drawing.text(x(0) + 5, y - 4, "for", Drawing.SMALL, Palette.QUIET, Anchor.START);
    if (least < 0) {
      drawing.text(x(0) - 5, y - 4, "against", Drawing.SMALL, Palette.QUIET, Anchor.END);
    }
    drawing.end();
  }

  private double x(double points) {
    double left = least < 0 ? Math.max(MARGIN, 48) : MARGIN;
    double scale = (WIDTH - left - MARGIN - 8) / (most - least);
    return left + (points - least) * scale;
  }

  private static List<String> name(RankedOption option) {
    double points = Fit.width(Reasons.inPoints(option.points()), 12.5) * BOLD + 8;
    return Fit.lines(option.place() + ". " + option.name(), (WIDTH - points) / BOLD, 12.5, 3);
  }

  private double option(Drawing drawing, RankedOption option, double top) {
    double y = top;
    List<String> lines = name(option);
    drawing.bold(WIDTH, y, Reasons.inPoints(option.points()), 12.5, Palette.INK, Anchor.END);
    for (String line : lines) {
      drawing.bold(0, y, line, 12.5, Palette.INK, Anchor.START);
      y += TITLE_LINE;
    }
    double bar = y - 6;
    pieces(drawing, option, bar, 1);
    pieces(drawing, option, bar, -1);
    drawing.line(x(0), bar - 4, x(0), bar + BAR + 8, Palette.INK, 1.4);
    total(drawing, option.points(), bar);
    return bar + BAR + STEP;
  }

  private void pieces(Drawing drawing, RankedOption option, double y, int sign) {
    List<Contribution> rows =
        option.votes().stream()
            .filter(row -> row.points().signum() == sign)
            .sorted(
                Comparator.comparing(Contribution::isCertain)
                    .reversed()
                    .thenComparing(row -> row.points().abs(), Comparator.reverseOrder()))
            .toList();
    double from = 0;
    for (Contribution row : rows) {
      double to = from + row.points().doubleValue();
      double left = x(Math.min(from, to));
      piece(drawing, row, left, y, x(Math.max(from, to)) - left);
      from = to;
    }
  }

  private static void piece(Drawing drawing, Contribution row, double x, double y, double width) {
    boolean isFor = row.points().signum() > 0;
    double inner = Math.max(0.5, width - 1);
    Palette colour = isFor ? Palette.ACCENT : Palette.AGAINST;
    if (!row.isCertain()) {
      drawing.box(x + 0.5, y, inner, BAR, Palette.PAPER, colour, 1, true);
    } else if (isFor) {
      drawing.box(x + 0.5, y, inner, BAR, colour, colour, 1, false);
    } else {
      drawing.box(x + 0.5, y, inner, BAR, Palette.PAPER, colour, 1, false);
      drawing.hatch(x + 0.5, y, inner, BAR, colour);
    }
    String points = Value.of(row.points().abs()).plain();
    if (Fit.width(points, Drawing.SMALL) + 4 < width) {
      double middle = x + width / 2;
      boolean onDark = isFor && row.isCertain();
      if (!onDark) {
        double room = Fit.width(points, Drawing.SMALL) + 3;
        drawing.box(middle - room / 2, y + 1.5, room, BAR - 3, Palette.PAPER);
      }
      Palette ink = onDark ? Palette.PAPER : Palette.INK;
      drawing.text(middle, y + 10.2, points, Drawing.SMALL, ink, Anchor.MIDDLE);
    }
  }

  /** The sum as a small mark under the bar, with its range when something is open. */
  private void total(Drawing drawing, Points points, double bar) {
    double y = bar + BAR + 5.5;
    double now = x(clamp(points.now().doubleValue()));
    if (!points.isCertain()) {
      double low = x(clamp(points.least().doubleValue()));
      double high = x(clamp(points.most().doubleValue()));
      drawing.line(low, y, high, y, Palette.INK, 1.2);
      drawing.line(low, y - 4, low, y + 4, Palette.INK, 1.2);
      drawing.line(high, y - 4, high, y + 4, Palette.INK, 1.2);
    }
    String diamond =
        "M "
            + Drawing.number(now)
            + " "
            + Drawing.number(y - 4.5)
            + " l 4 4.5 l -4 4.5 l -4 -4.5 z";
    drawing.path(diamond, Palette.INK.hex(), Palette.PAPER, 0.8, false);
  }

  private double clamp(double points) {
    return Math.max(least, Math.min(most, points));
  }

  private String inWords() {
    return options.stream().map(VoteBars::inWords).collect(Collectors.joining(" "));
  }

  private static String inWords(RankedOption option) {
    List<String> parts = new ArrayList<>();
    for (Contribution row : option.votes()) {
      String verb = row.isCertain() ? "" : "may be ";
      parts.add(
          verb
              + Value.of(row.points().abs()).plain()
              + (row.points().signum() < 0 ? " against by " : " for by ")
              + row.firing().row().id());
    }
    String rows = parts.isEmpty() ? "no row speaks for or against it" : Words.and(parts);
    return option.place()
        + ". "
        + option.name()
        + ": "
        + option.points().plain()
        + "; "
        + rows
        + ".";
  }
}
