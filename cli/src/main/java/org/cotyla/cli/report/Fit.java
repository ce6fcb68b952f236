package org.cotyla.cli.report;

import java.util.ArrayList;
import java.util.List;
import org.cotyla.cli.text.Printable;

/**
 * Breaks text for pictures, where nothing wraps by itself. Widths are those of a plain sans serif,
 * taken a little wide.
 */
final class Fit {

  private static final double MEAN_WIDTH = 0.53;
  private static final String MORE = "…";

  private Fit() {}

  /** The lines of a text in that width; a word that is too long is cut across lines. */
  static List<String> lines(String text, double width, double size) {
    int room = Math.max(4, (int) (width / (size * MEAN_WIDTH)));
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : Printable.line(text).strip().split("\\s+")) {
      String rest = word;
      if (line.length() > 0 && line.length() + 1 + length(rest) > room) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (length(rest) > room) {
        int cut = rest.offsetByCodePoints(0, room);
        lines.add(rest.substring(0, cut));
        rest = rest.substring(cut);
      }
      line.append(line.length() > 0 && !rest.isEmpty() ? " " : "").append(rest);
    }
    if (line.length() > 0 || lines.isEmpty()) {
      lines.add(line.toString());
    }
    return lines;
  }

  /** At most so many lines; the last one then says that there is more. */
  static List<String> lines(String text, double width, double size, int most) {
    List<String> all = lines(text, width, size);
    if (all.size() <= most) {
      return all;
    }
    List<String> some = new ArrayList<>(all.subList(0, most));
    String last = some.get(most - 1);
    int cut = Math.max(0, length(last) - 2);
    some.set(most - 1, last.substring(0, last.offsetByCodePoints(0, cut)) + MORE);
    return some;
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }

  /** About how wide a text is. */
  static double width(String text, double size) {
    return length(text) * size * MEAN_WIDTH;
  }
}
