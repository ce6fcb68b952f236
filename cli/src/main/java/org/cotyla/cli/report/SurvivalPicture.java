package org.cotyla.cli.report;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.cotyla.audit.OutcomeCurve;
import org.cotyla.audit.Survival;
import org.cotyla.audit.Survival.Step;
import org.cotyla.cli.report.Drawing.Anchor;
import org.cotyla.cli.text.Figures;

/** A survival curve with its limits and the numbers at risk below it. */
final class SurvivalPicture {

  private static final double WIDTH = 328;
  private static final double HEIGHT = 226;
  private static final double LEFT = 36;
  private static final double RIGHT = WIDTH - 12;
  private static final double TOP = 12;
  private static final double BOTTOM = HEIGHT - 56;
  private static final double YEAR = 365.25;
  private static final int MOST_MARKS = 6;

  private final Drawing drawing;
  private final Survival survival;
  private final double years;

  private SurvivalPicture(Drawing drawing, Survival survival) {
    this.drawing = drawing;
    this.survival = survival;
    this.years = Math.max(survival.lastDay() / YEAR, 0.1);
  }

  static void draw(Markup markup, String id, OutcomeCurve curve) {
    String title = "Free of " + curve.outcome() + " after " + curve.option();
    Survival survival = curve.survival();
    Drawing drawing = Drawing.start(markup, id, WIDTH, HEIGHT, title, inWords(survival));
    SurvivalPicture picture = new SurvivalPicture(drawing, survival);
    picture.axes();
    picture.curve(Step::upper, true);
    picture.curve(Step::lower, true);
    picture.curve(Step::free, false);
    drawing.end();
  }

  /** The same in a table, for those with and without a curve. */
  static void row(HtmlTable table, OutcomeCurve curve) {
    Survival survival = curve.survival();
    table.row(
        curve.option(),
        survival.events() + " of " + survival.subjects(),
        survival.steps().isEmpty() ? "no event" : last(survival),
        survival.steps().isEmpty() ? "" : Long.toString(lastStep(survival).atRisk()));
  }

  private static Step lastStep(Survival survival) {
    return survival.steps().get(survival.steps().size() - 1);
  }

  private static String last(Survival survival) {
    Step last = lastStep(survival);
    return Figures.percent(last.free())
        + " "
        + Figures.range(last.lower(), last.upper())
        + " at day "
        + last.days();
  }

  private static String inWords(Survival survival) {
    return survival.events()
        + " of "
        + survival.subjects()
        + " had it; free of it "
        + last(survival)
        + ".";
  }

  private double x(double atYears) {
    return LEFT + atYears / years * (RIGHT - LEFT);
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
    drawing.text(0, BOTTOM + 42, "at risk, by years", Drawing.SMALL, Palette.QUIET, Anchor.START);
    double step = step();
    for (int i = 0; i * step <= years; i++) {
      double at = i * step;
      drawing.line(x(at), BOTTOM, x(at), BOTTOM + 4, Palette.LINE, 1);
      drawing.text(
          x(at), BOTTOM + 15, Drawing.number(at), Drawing.SMALL, Palette.QUIET, Anchor.MIDDLE);
      drawing.text(
          x(at),
          BOTTOM + 28,
          Long.toString(survival.atRisk((long) Math.ceil(at * YEAR))),
          Drawing.SMALL,
          Palette.INK,
          Anchor.MIDDLE);
    }
  }

  private double step() {
    for (double step : List.of(0.1, 0.25, 0.5, 1.0, 2.0, 5.0)) {
      if (years / step <= MOST_MARKS) {
        return step;
      }
    }
    return Math.ceil(years / MOST_MARKS);
  }

  private void curve(ToDoubleFunction<Step> height, boolean dashed) {
    StringBuilder path = new StringBuilder("M ").append(point(0, 1));
    double before = 1;
    for (Step step : survival.steps()) {
      double at = step.days() / YEAR;
      path.append(" L ").append(point(at, before));
      before = height.applyAsDouble(step);
      path.append(" L ").append(point(at, before));
    }
    path.append(" L ").append(point(years, before));
    Palette colour = dashed ? Palette.LINE : Palette.INK;
    drawing.path(path.toString(), "none", colour, dashed ? 1 : 1.8, dashed);
  }

  private String point(double atYears, double share) {
    return Drawing.number(x(atYears)) + " " + Drawing.number(y(share));
  }
}
