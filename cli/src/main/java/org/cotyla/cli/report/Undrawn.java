package org.cotyla.cli.report;

import java.util.List;
import java.util.Optional;
import org.cotyla.cli.text.Words;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.Picture;
import org.cotyla.protocol.Picture.Part;
import org.cotyla.protocol.Picture.Shown;
import org.cotyla.protocol.PictureKind;
import org.cotyla.protocol.PictureRole;

/** Why a picture is not drawn, or the point or sector in it: the data that it would need. */
record Undrawn(Sheet sheet, Picture picture) {

  private static final int MOST_NAMED = 8;

  /**
   * The reason; nothing when all is drawn.
   *
   * @param drawn whether the picture itself is drawn
   */
  Optional<String> why(boolean drawn) {
    List<Symbol> needs =
        picture.parts().stream()
            .filter(part -> isWanting(part, drawn))
            .flatMap(part -> PictureValues.formula(part).stream())
            .flatMap(formula -> formula.references().stream())
            .toList();
    boolean isWhole = drawn && needs.isEmpty();
    return isWhole ? Optional.empty() : Optional.of(what(drawn) + reason(needs));
  }

  private String what(boolean drawn) {
    if (!drawn) {
      return "Not drawn";
    }
    return picture.kind() == PictureKind.CLOCK_FACE
        ? "The sector is not drawn"
        : "The point is not drawn";
  }

  private String reason(List<Symbol> needs) {
    List<String> open =
        OpenData.under(sheet.advice(), needs).stream().filter(name -> !isVaried(name)).toList();
    return open.isEmpty()
        ? ": it does not apply in this case."
        : ": it hangs on "
            + Words.some(open, MOST_NAMED)
            + (open.size() == 1 ? ", which is not known." : ", which are not known.");
  }

  /** A curve tries every value of its finding, so it does not hang on the recorded one. */
  private boolean isVaried(String field) {
    return picture.parts(PictureRole.FINDING).stream()
        .map(Part::shows)
        .anyMatch(
            shown ->
                shown instanceof Shown.Finding finding && finding.field().name().equals(field));
  }

  private boolean isWanting(Part part, boolean drawn) {
    PictureValues values = new PictureValues(sheet.scope(), picture);
    return switch (picture.kind()) {
      case CLOCK_FACE ->
          (part.role() == PictureRole.SECTOR_FROM || part.role() == PictureRole.SECTOR_TO)
              && values.range(part).filter(NumberRange::isCertain).isEmpty();
      case ZONE_CHART ->
          drawn
              ? (part.role() == PictureRole.ACROSS || part.role() == PictureRole.UP)
                  && values.range(part).isEmpty()
              : PictureRole.zoneSides().contains(part.role())
                  && values.range(part).filter(NumberRange::isCertain).isEmpty();
      case CURVE -> !drawn && part.role() == PictureRole.UP;
      case FLOW, LISTS -> false;
    };
  }
}
