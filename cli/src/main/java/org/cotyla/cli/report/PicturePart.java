package org.cotyla.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.expression.Expression;
import org.cotyla.protocol.Picture;
import org.cotyla.protocol.Picture.Part;
import org.cotyla.protocol.Picture.Shown;
import org.cotyla.protocol.PictureKind;
import org.cotyla.protocol.PictureRole;

/** The pictures that the protocol asks for: drawings side by side, lists below each other. */
final class PicturePart {

  private final Sheet sheet;
  private final Markup markup;
  private final Variation variation;

  PicturePart(Sheet sheet, Variation variation) {
    this.sheet = sheet;
    this.markup = sheet.markup();
    this.variation = variation;
  }

  /** Two drawings that follow each other share a row, and so do a flow and the lists after it. */
  void writeAll(List<Picture> pictures) {
    for (int i = 0; i < pictures.size(); i++) {
      boolean two =
          i + 1 < pictures.size() && share(pictures.get(i).kind(), pictures.get(i + 1).kind());
      if (two) {
        markup.start("div", "class", "pair");
        write(pictures.get(i), true);
        write(pictures.get(i + 1), true);
        markup.end();
        i++;
      } else {
        write(pictures.get(i), false);
      }
    }
  }

  private static boolean share(PictureKind one, PictureKind next) {
    return one == PictureKind.FLOW
        ? next == PictureKind.LISTS
        : one != PictureKind.LISTS && next != PictureKind.LISTS && next != PictureKind.FLOW;
  }

  private void write(Picture picture, boolean shares) {
    String id = sheet.nextPicture();
    markup.start(
        "section",
        "class",
        "picture " + picture.kind().word().replace(' ', '-'),
        "aria-labelledby",
        id);
    markup.leaf(picture.onFirstPage() ? "h2" : "h3", picture.title(), "id", id);
    switch (picture.kind()) {
      case LISTS -> {
        figures(picture);
        lists(picture, shares);
      }
      case FLOW -> {
        figure(picture, () -> drawn(() -> new Flow(sheet, picture).draw()));
        figures(picture);
      }
      case CLOCK_FACE -> figure(picture, () -> drawn(() -> new ClockFace(sheet, picture).draw()));
      case ZONE_CHART -> figure(picture, () -> new ZoneChart(sheet, picture).draw());
      case CURVE -> figure(picture, () -> new Curve(sheet, picture, variation).draw());
    }
    markup.end();
  }

  /** Draws, and says whether there was anything to draw. */
  private interface Draws {
    boolean draw();
  }

  private static boolean drawn(Runnable drawing) {
    drawing.run();
    return true;
  }

  private void figure(Picture picture, Draws draws) {
    markup.start("figure");
    boolean drawn = draws.draw();
    new Undrawn(sheet, picture)
        .why(drawn)
        .ifPresent(why -> markup.leaf("p", why, "class", "not-drawn"));
    if (picture.kind() != PictureKind.FLOW && !picture.parts(PictureRole.FIGURE).isEmpty()) {
      markup.start("figcaption");
      figures(picture);
      markup.end();
    }
    markup.end();
  }

  private void figures(Picture picture) {
    List<Part> parts = picture.parts(PictureRole.FIGURE);
    if (parts.isEmpty()) {
      return;
    }
    markup.start("dl", "class", "figures");
    for (Part part : parts) {
      Optional<Expression> formula = PictureValues.formula(part);
      markup.start("div");
      markup.leaf("dt", part.label());
      markup.leaf("dd", formula.map(sheet::inWords).orElse(""));
      markup.end();
    }
    markup.end();
  }

  private void lists(Picture picture, boolean shares) {
    ListBlock block = new ListBlock(sheet, !picture.onFirstPage());
    List<TwoColumns.Block> blocks = new ArrayList<>();
    for (Part part : picture.parts(PictureRole.LIST)) {
      Shown.Listed listed = (Shown.Listed) part.shows();
      Optional<DecisionResult> result = sheet.advice().decision(listed.decision().name());
      if (result.filter(ListBlock::hasEntries).isPresent()) {
        blocks.add(block.of(part.label(), result.get(), picture.onFirstPage() ? "h3" : "h4"));
      }
    }
    if (blocks.isEmpty()) {
      markup.leaf("p", "None.", "class", "none");
    }
    TwoColumns columns = new TwoColumns(markup, blocks);
    if (shares) {
      columns.writeAsOne();
    } else {
      columns.write();
    }
  }
}
