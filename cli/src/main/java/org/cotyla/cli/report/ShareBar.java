package org.cotyla.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cotyla.cli.report.Drawing.Anchor;
import org.cotyla.protocol.Picture;
import org.cotyla.protocol.Picture.Part;
import org.cotyla.protocol.PictureRole;

/**
 * A percentage as a bar from 0 to 100, with lines across that mean something.
 *
 * @param label what it is
 * @param range what it can be; nothing when it does not apply
 * @param words the same in words
 */
record ShareBar(String label, Optional<NumberRange> range, String words) {

  private static final double BAR = 11;
  private static final double STEP = 32;
  private static final double LINE = 13;

  static List<ShareBar> of(Sheet sheet, Picture picture) {
    PictureValues values = new PictureValues(sheet.scope(), picture);
    List<ShareBar> bars = new ArrayList<>();
    for (Part part : picture.parts(PictureRole.SHARE)) {
      String words = PictureValues.formula(part).map(sheet::inWords).orElse("");
      Optional<NumberRange> range =
          words.equals("not stated") ? Optional.empty() : values.range(part);
      bars.add(new ShareBar(part.label(), range, words));
    }
    return bars;
  }

  static double height(List<ShareBar> bars, Picture picture) {
    return bars.isEmpty()
        ? 0
        : bars.size() * STEP + 12 + picture.parts(PictureRole.SHARE_LINE).size() * LINE;
  }

  static void draw(
      Drawing drawing,
      Sheet sheet,
      Picture picture,
      List<ShareBar> bars,
      double width,
      double top) {
    double y = top;
    for (ShareBar bar : bars) {
      drawing.text(0, y, shown(bar.label(), width - 90), Drawing.SMALL, Palette.INK, Anchor.START);
      drawing.bold(width, y, shown(bar.words(), 90), Drawing.SMALL, Palette.INK, Anchor.END);
      drawing.box(0, y + 5, width, BAR, Palette.PAPER, Palette.LINE, 0.8, false);
      double from = y;
      bar.range()
          .ifPresent(
              range -> {
                double low = width * range.low() / 100;
                drawing.box(0, from + 5, low, BAR, Palette.ACCENT);
                if (!range.isCertain()) {
                  double more = width * (range.high() - range.low()) / 100;
                  drawing.box(low, from + 5, more, BAR, Palette.OPEN, Palette.ACCENT, 1, true);
                }
              });
      y += STEP;
    }
    lines(drawing, sheet, picture, width, top, y - 6);
  }

  private static void lines(
      Drawing drawing, Sheet sheet, Picture picture, double width, double top, double bottom) {
    PictureValues values = new PictureValues(sheet.scope(), picture);
    double y = bottom;
    for (Part part : picture.parts(PictureRole.SHARE_LINE)) {
      Optional<NumberRange> at = values.range(part).filter(NumberRange::isCertain);
      if (at.isPresent()) {
        double x = width * at.get().low() / 100;
        for (double from = top + 3; from < bottom - 8; from += STEP) {
          drawing.line(x, from, x, from + BAR + 4, Palette.PAPER, 3);
          drawing.line(x, from, x, from + BAR + 4, Palette.INK, 1.4);
        }
        String text = "line at " + at.get().plain() + " %: " + part.label();
        drawing.text(0, y + 8, shown(text, width), Drawing.SMALL, Palette.QUIET, Anchor.START);
        y += LINE;
      }
    }
  }

  private static String shown(String text, double width) {
    return Fit.lines(text, width, Drawing.SMALL, 1).get(0);
  }

  static String inWords(Sheet sheet, Picture picture) {
    return of(sheet, picture).stream()
        .map(bar -> " " + bar.label() + ": " + bar.words() + ".")
        .collect(Collectors.joining());
  }
}
