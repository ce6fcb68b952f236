package org.cotyla.cli.text;

import java.util.ArrayList;
import java.util.List;

/**
 * Breaks text into lines at spaces. A word that is longer than a line stands alone, unbroken; a
 * non-breaking space is no place to break.
 */
final class Wrap {

  private Wrap() {}

  /** The lines, each of at most so many characters; an accent on its own is no character. */
  static List<String> lines(String text, int room) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    int used = 0;
    for (String word : text.strip().split(" +")) {
      int length = length(word);
      if (used > 0 && used + 1 + length > room) {
        lines.add(line.toString());
        line.setLength(0);
        used = 0;
      }
      if (used > 0) {
        line.append(' ');
        used++;
      }
      line.append(word);
      used += length;
    }
    lines.add(line.toString());
    return lines;
  }

  static int length(String text) {
    return (int)
        text.codePoints()
            .filter(character -> Character.getType(character) != Character.NON_SPACING_MARK)
            .count();
  }
}
