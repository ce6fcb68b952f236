package org.cotyla.cli.report;

import org.cotyla.cli.report.Drawing.Anchor;

/**
 * The two axes of a chart, with their places on the paper.
 *
 * @param left the least number across
 * @param right the greatest number across
 * @param bottom the least number upwards
 * @param top the greatest number upwards
 */
record Axes(double left, double right, double bottom, double top) {

  static final double WIDTH = 328;
  static final double HEIGHT = 270;
  private static final double PAPER_LEFT = 44;
  private static final double PAPER_RIGHT = WIDTH - 12;
  private static final double PAPER_TOP = 22;
  private static final double PAPER_BOTTOM = HEIGHT - 44;

  /** Axes that reach to round numbers beyond both ends. */
  static Axes around(double left, double right, double bottom, double top) {
    double across = step(right - left);
    double up = step(top - bottom);
    return new Axes(
        Math.floor(left / across) * across,
        Math.ceil(right / across) * across,
        Math.floor(bottom / up) * up,
        Math.ceil(top / up) * up);
  }

  /** A round step that gives about six marks. */
  private static double step(double span) {
    for (double step : new double[] {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100}) {
      if (span / step <= 7) {
        return step;
      }
    }
    return StrictMath.pow(10, Math.ceil(StrictMath.log10(Math.max(1, span))) - 1) * 2;
  }

  double x(double across) {
    return PAPER_LEFT + (across - left) / (right - left) * (PAPER_RIGHT - PAPER_LEFT);
  }

  double y(double up) {
    return PAPER_BOTTOM - (up - bottom) / (top - bottom) * (PAPER_BOTTOM - PAPER_TOP);
  }

  void draw(Drawing drawing, String across, String up) {
    double stepAcross = step(right - left);
    for (int i = 0; left + i * stepAcross <= right + 1e-9; i++) {
      double at = left + i * stepAcross;
      drawing.line(x(at), PAPER_TOP, x(at), PAPER_BOTTOM, Palette.RULE, 0.6);
      drawing.line(x(at), PAPER_BOTTOM, x(at), PAPER_BOTTOM + 4, Palette.LINE, 1);
      drawing.text(
          x(at),
          PAPER_BOTTOM + 16,
          Drawing.number(at),
          Drawing.SMALL,
          Palette.QUIET,
          Anchor.MIDDLE);
    }
    double stepUp = step(top - bottom);
    for (int i = 0; bottom + i * stepUp <= top + 1e-9; i++) {
      double at = bottom + i * stepUp;
      drawing.line(PAPER_LEFT, y(at), PAPER_RIGHT, y(at), Palette.RULE, 0.6);
      drawing.text(
          PAPER_LEFT - 6,
          y(at) + 3.5,
          Drawing.number(at),
          Drawing.SMALL,
          Palette.QUIET,
          Anchor.END);
    }
    drawing.line(PAPER_LEFT, PAPER_TOP, PAPER_LEFT, PAPER_BOTTOM, Palette.LINE, 1.2);
    drawing.line(PAPER_LEFT, PAPER_BOTTOM, PAPER_RIGHT, PAPER_BOTTOM, Palette.LINE, 1.2);
    drawing.text(PAPER_RIGHT, HEIGHT - 10, shown(across), Drawing.SMALL, Palette.INK, Anchor.END);
    drawing.text(0, 10, shown(up), Drawing.SMALL, Palette.INK, Anchor.START);
  }

  private static String shown(String label) {
    return Fit.lines(label, WIDTH - 30, Drawing.SMALL, 1).get(0);
  }

  void level(Drawing drawing, double up, String label) {
    drawing.dashed(PAPER_LEFT, y(up), PAPER_RIGHT, y(up), Palette.INK, 1.2);
    String text = Fit.lines(label, WIDTH - 80, Drawing.SMALL, 1).get(0);
    double room = Fit.width(text, Drawing.SMALL) + 4;
    drawing.box(PAPER_RIGHT - room - 2, y(up) - 15, room, 12, Palette.PAPER);
    drawing.text(PAPER_RIGHT - 4, y(up) - 5, text, Drawing.SMALL, Palette.INK, Anchor.END);
  }
}
