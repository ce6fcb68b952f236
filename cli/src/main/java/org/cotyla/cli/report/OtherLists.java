package org.cotyla.cli.report;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Picture.Shown;
import org.cotyla.protocol.PictureKind;
import org.cotyla.protocol.ShownAs;

/** Every list of the protocol that no picture shows already. */
final class OtherLists {

  private final Sheet sheet;

  OtherLists(Sheet sheet) {
    this.sheet = sheet;
  }

  void write() {
    Set<DecisionTable> shown =
        sheet.advice().protocol().pictures().stream()
            .filter(picture -> picture.kind() == PictureKind.LISTS)
            .flatMap(picture -> picture.parts().stream())
            .flatMap(
                part ->
                    part.shows() instanceof Shown.Listed listed
                        ? java.util.stream.Stream.of(listed.decision())
                        : java.util.stream.Stream.empty())
            .collect(Collectors.toSet());
    List<DecisionResult> others =
        sheet.advice().decisions().stream()
            .filter(result -> result.table().shownAs() != ShownAs.WORKING)
            .filter(result -> result.table().hitPolicy().isList() && !result.table().votes())
            .filter(result -> !shown.contains(result.table()))
            .filter(ListBlock::hasEntries)
            .toList();
    if (others.isEmpty()) {
      return;
    }
    Markup markup = sheet.markup();
    markup.start("section", "aria-labelledby", "lists");
    markup.leaf("h3", "Steps and measures", "id", "lists");
    ListBlock block = new ListBlock(sheet, false);
    new TwoColumns(
            markup,
            others.stream().map(result -> block.of(result.table().name(), result, "h4")).toList())
        .write();
    markup.end();
  }
}
