package org.cotyla.cli.text;

import java.util.ArrayList;
import java.util.List;

/** Rows of a name and two values side by side; long cells go on under their own start. */
final class Columns {

  private static final int INDENT = 2;
  private static final int GAP = 2;
  private static final int NARROWEST = 8;

  private final Page page;
  private final int name;
  private final int value;

  /**
   * Columns for these names.
   *
   * @param longest the length of the longest name, to which at most a third of the page is given
   */
  Columns(Page page, int longest) {
    this.page = page;
    int room = page.width() - INDENT - 2 * GAP;
    this.name = Math.max(NARROWEST, Math.min(longest, room / 3));
    this.value = Math.max(NARROWEST, (room - name) / 2);
  }

  void row(String label, String before, String after) {
    List<String> labels = Wrap.lines(Printable.line(label), name);
    List<String> left = Wrap.lines(Printable.line(before), value);
    List<String> right = Wrap.lines(Printable.line(after), value);
    int lines = Math.max(labels.size(), Math.max(left.size(), right.size()));
    List<String> rows = new ArrayList<>();
    for (int i = 0; i < lines; i++) {
      rows.add(
          " ".repeat(INDENT)
              + padded(at(labels, i), name + GAP)
              + padded(at(left, i), value + GAP)
              + at(right, i));
    }
    page.rawLines(rows);
  }

  private static String at(List<String> lines, int i) {
    return i < lines.size() ? lines.get(i) : "";
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(Math.max(1, width - Wrap.length(text)));
  }
}
