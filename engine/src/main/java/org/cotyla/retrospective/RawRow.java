package org.cotyla.retrospective;

import java.util.List;
import java.util.Optional;

/**
 * A row of the file, not yet read as a case.
 *
 * @param number its number as a spreadsheet program shows it; the headings are row 1
 * @param text what stands there, which tells whether the file was changed
 * @param cells its cells; none when it is broken
 * @param broken why it cannot be taken apart into cells
 */
record RawRow(long number, String text, List<String> cells, Optional<String> broken) {

  static RawRow of(long number, List<String> cells) {
    return new RawRow(number, String.join("\u001f", cells), cells, Optional.empty());
  }

  static RawRow broken(long number, String text, String why) {
    return new RawRow(number, text, List.of(), Optional.of(why));
  }

  boolean isBlank() {
    return broken.isEmpty() && cells.stream().allMatch(String::isBlank);
  }
}
