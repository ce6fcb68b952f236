package org.cotyla.cli.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.cli.report.Drawing.Anchor;
import org.cotyla.expression.Expression;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Picture;
import org.cotyla.protocol.Picture.Part;
import org.cotyla.protocol.Picture.Shown;
import org.cotyla.protocol.PictureRole;

/** What a number would be for every value of one finding, the others being as in the case. */
final class Curve {

  private static final int MOST_RUNS = 101;

  private final Sheet sheet;
  private final Picture picture;
  private final Variation variation;
  private final PictureValues values;

  /** One place on the curve. */
  private record Place(double given, NumberRange result) {}

  Curve(Sheet sheet, Picture picture, Variation variation) {
    this.sheet = sheet;
    this.picture = picture;
    this.variation = variation;
    this.values = new PictureValues(sheet.scope(), picture);
  }

  /** Nothing is drawn when the number is not known for any value. */
  boolean draw() {
    Part finding = picture.part(PictureRole.FINDING).orElseThrow();
    Field field = ((Shown.Finding) finding.shows()).field();
    Part up = picture.part(PictureRole.UP).orElseThrow();
    Expression formula = PictureValues.formula(up).orElseThrow();
    List<Place> places = places(field, formula);
    if (places.size() < 2) {
      return false;
    }
    List<NumberRange> levels = levels();
    Axes axes = axes(places, levels);
    Drawing drawing =
        Drawing.start(
            sheet.markup(),
            sheet.nextPicture(),
            Axes.WIDTH,
            Axes.HEIGHT,
            picture.title(),
            inWords(places));
    axes.draw(drawing, finding.label(), up.label());
    line(drawing, axes, places);
    levels(drawing, axes);
    own(field).ifPresent(given -> point(drawing, axes, places, given));
    drawing.end();
    return true;
  }

  private List<Place> places(Field field, Expression formula) {
    List<Place> places = new ArrayList<>();
    for (Variation.Result run : variation.of(field, steps(field), formula)) {
      NumberRange.of(run.result())
          .ifPresent(result -> places.add(new Place(run.given().doubleValue(), result)));
    }
    return places;
  }

  /** From the least to the greatest by the step, and the case's own value among them. */
  private List<BigDecimal> steps(Field field) {
    double from = values.certain(PictureRole.FROM).orElse(0.0);
    double to = values.certain(PictureRole.TO).orElse(from);
    double step = values.certain(PictureRole.STEP).orElse(0.0);
    List<BigDecimal> steps = new ArrayList<>();
    if (step > 0 && to > from) {
      double wide = Math.max(step, (to - from) / (MOST_RUNS - 1));
      for (int i = 0; from + i * wide <= to + 1e-9; i++) {
        steps.add(exact(from + i * wide));
      }
      own(field)
          .map(BigDecimal::valueOf)
          .filter(own -> steps.stream().noneMatch(one -> one.compareTo(own) == 0))
          .ifPresent(steps::add);
    }
    return steps.stream().sorted().toList();
  }

  /** Without the last digits of binary arithmetic, so that 22.3 is 22.3. */
  private static BigDecimal exact(double value) {
    return BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_UP).stripTrailingZeros();
  }

  /** The case's own value, when it is stated and certain. */
  private Optional<Double> own(Field field) {
    return sheet
        .advice()
        .findings()
        .datum(field.name())
        .filter(datum -> datum.knowledge() == Knowledge.RECORDED)
        .map(Datum::value)
        .flatMap(NumberRange::of)
        .map(NumberRange::low);
  }

  private List<NumberRange> levels() {
    return picture.parts(PictureRole.LINE).stream()
        .flatMap(part -> values.range(part).filter(NumberRange::isCertain).stream())
        .toList();
  }

  private static Axes axes(List<Place> places, List<NumberRange> levels) {
    double bottom = 0;
    double top = 1;
    for (Place place : places) {
      bottom = Math.min(bottom, place.result().low());
      top = Math.max(top, place.result().high());
    }
    for (NumberRange level : levels) {
      bottom = Math.min(bottom, level.low());
      top = Math.max(top, level.high() * 1.1);
    }
    double left = places.get(0).given();
    double right = places.get(places.size() - 1).given();
    return Axes.around(left, right, bottom, top);
  }

  /** A line where the number is certain, a band where it is not. */
  private static void line(Drawing drawing, Axes axes, List<Place> places) {
    boolean certain = places.stream().allMatch(place -> place.result().isCertain());
    StringBuilder upper = new StringBuilder();
    StringBuilder lower = new StringBuilder();
    for (Place place : places) {
      upper
          .append(upper.length() == 0 ? "M " : " L ")
          .append(at(axes, place.given(), place.result().high()));
      lower.insert(0, " L " + at(axes, place.given(), place.result().low()));
    }
    if (certain) {
      drawing.path(upper.toString(), "none", Palette.ACCENT, 2.4, false);
    } else {
      drawing.path(upper.append(lower) + " Z", Palette.OPEN.hex(), Palette.ACCENT, 1.4, true);
    }
  }

  private static String at(Axes axes, double across, double up) {
    return Drawing.number(axes.x(across)) + " " + Drawing.number(axes.y(up));
  }

  private void levels(Drawing drawing, Axes axes) {
    for (Part part : picture.parts(PictureRole.LINE)) {
      values
          .range(part)
          .filter(NumberRange::isCertain)
          .ifPresent(at -> axes.level(drawing, at.low(), part.label() + " " + at.plain()));
    }
  }

  private static void point(Drawing drawing, Axes axes, List<Place> places, double given) {
    places.stream()
        .filter(place -> place.given() == given)
        .findFirst()
        .ifPresent(
            place -> {
              double x = axes.x(given);
              double y = axes.y(place.result().high());
              drawing.dashed(x, y, x, axes.y(axes.bottom()), Palette.INK, 0.9);
              if (place.result().isCertain()) {
                drawing.circle(x, y, 5, Palette.INK.hex(), Palette.PAPER, 1.4);
              } else {
                drawing.line(x, y, x, axes.y(place.result().low()), Palette.INK, 2.4);
              }
              String words = Drawing.number(given) + ": " + place.result().plain();
              boolean left = x > Axes.WIDTH - 90;
              drawing.bold(
                  left ? x - 9 : x + 9,
                  y + 15,
                  words,
                  Drawing.SMALL,
                  Palette.INK,
                  left ? Anchor.END : Anchor.START);
            });
  }

  private String inWords(List<Place> places) {
    Place first = places.get(0);
    Place last = places.get(places.size() - 1);
    StringBuilder words = new StringBuilder();
    words
        .append("From ")
        .append(first.result().plain())
        .append(" at ")
        .append(Drawing.number(first.given()))
        .append(" to ")
        .append(last.result().plain())
        .append(" at ")
        .append(Drawing.number(last.given()))
        .append('.');
    for (Part part : picture.parts(PictureRole.LINE)) {
      values
          .range(part)
          .ifPresent(
              at ->
                  words
                      .append(" Line: ")
                      .append(part.label())
                      .append(' ')
                      .append(at.plain())
                      .append('.'));
    }
    return words.toString();
  }
}
