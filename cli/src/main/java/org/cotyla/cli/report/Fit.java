package org.cotyla.cli.report;

import java.util.ArrayList;
import java.util.List;
import org.cotyla.cli.text.Printable;

/**
 * Breaks text for pictures, where nothing wraps by itself. Widths are those of a plain sans serif,
 * taken a little wide.
 */
final class Fit {

  private static final String MORE = "…";

  private Fit() {}

  /** The lines of a text in that width; a word that is too long is cut across lines. */
  static List<String> lines(String text, double width, double size) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : Printable.line(text).strip().split("\\s+")) {
      String rest = word;
      if (line.length() > 0 && width(line + " " + rest, size) > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (width(rest, size) > width && length(rest) > 1) {
        int cut = rest.offsetByCodePoints(0, fitting(rest, width, size));
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

  /** How many letters of a word fit; at least one, so that there is an end. */
  private static int fitting(String word, double width, double size) {
    double used = 0;
    int letters = 0;
    for (int letter : word.codePoints().toArray()) {
      used += width(letter) * size;
      if (used > width) {
        break;
      }
      letters++;
    }
    return Math.max(1, letters);
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
    return text.codePoints().mapToDouble(Fit::width).sum() * size;
  }

  /** A letter's width in parts of the letter size. */
  private static double width(int letter) {
    if (letter > 0x2E7F) {
      return 1.05;
    }
    if ("ijl'|".indexOf(letter) >= 0) {
      return 0.25;
    }
    if (" ft.,:;!/\\[]I".indexOf(letter) >= 0) {
      return 0.3;
    }
    if ("r()-{}".indexOf(letter) >= 0) {
      return 0.36;
    }
    if ("cksvxyzJ".indexOf(letter) >= 0) {
      return 0.52;
    }
    if ("mwMW%@—…".indexOf(letter) >= 0) {
      return letter == 'w' ? 0.75 : 0.98;
    }
    return Character.isUpperCase(letter) ? 0.76 : 0.58;
  }
}
