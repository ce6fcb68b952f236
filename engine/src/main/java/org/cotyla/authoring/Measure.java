package org.cotyla.authoring;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;

/** How wide columns and how high rows must be for their words, estimated by ordinary letters. */
final class Measure {

  private static final int NARROWEST = 8;
  private static final int SHORT = 16;
  private static final int MIDDLE = 24;
  private static final int WIDEST = 50;
  private static final int UNITS_PER_CHARACTER = 256;

  /** How many small letters go into a column for each character of its width. */
  private static final double LETTERS = 1.12;

  private static final List<String> PROSE =
      List.of("because", "meaning", "citation", "what", "what changed", "why", "note");
  private static final float LINE = 11.6f;
  private static final float PADDING = 4;
  private static final float HIGHEST = 400;

  private Measure() {}

  /** Sets the widths of a table's columns from its headings down, and the heights of its rows. */
  static void fit(Sheets.Table table) {
    Map<Integer, Integer> widths = new HashMap<>();
    for (Sheets.Column column : table.columns()) {
      widths.put(column.index(), width(table, column.index()));
    }
    widths.forEach(
        (column, width) -> table.sheet().setColumnWidth(column, width * UNITS_PER_CHARACTER));
    for (Row row : table.sheet()) {
      if (row.getRowNum() >= table.headingRow()) {
        height(row, widths);
      }
    }
  }

  private static int width(Sheets.Table table, int column) {
    int longest = 0;
    int word = 0;
    for (Row row : table.sheet()) {
      Cell cell = row.getCell(column);
      if (row.getRowNum() < table.headingRow() || cell == null) {
        continue;
      }
      String text = Sheets.text(cell);
      longest = Math.max(longest, text.length());
      for (String part : text.split("\\s+")) {
        word = Math.max(word, part.length());
      }
    }
    if (isProse(table, column)) {
      return Math.max(NARROWEST, Math.min(longest, WIDEST) + 2);
    }
    int wanted =
        longest <= SHORT ? longest : longest <= 2 * WIDEST ? Math.max(SHORT, longest / 2) : WIDEST;
    int most = longest > 2 * WIDEST ? WIDEST : MIDDLE;
    return Math.max(NARROWEST, Math.min(Math.max(Math.min(wanted, most), word), WIDEST) + 2);
  }

  /** Sentences are read best in wide columns. */
  private static boolean isProse(Sheets.Table table, int column) {
    return table.columns().stream()
        .filter(one -> one.index() == column)
        .anyMatch(one -> PROSE.stream().anyMatch(one::says));
  }

  private static void height(Row row, Map<Integer, Integer> widths) {
    int lines = 0;
    for (Map.Entry<Integer, Integer> column : widths.entrySet()) {
      Cell cell = row.getCell(column.getKey());
      if (cell != null && !isMerged(row.getSheet(), cell)) {
        lines = Math.max(lines, lines(Sheets.text(cell), (int) (column.getValue() * LETTERS)));
      }
    }
    if (lines > 0) {
      row.setHeightInPoints(Math.min(HIGHEST, PADDING + LINE * lines));
    }
  }

  private static boolean isMerged(Sheet sheet, Cell cell) {
    return sheet.getMergedRegions().stream()
        .filter(region -> region.getNumberOfCells() > 1)
        .anyMatch((CellRangeAddress region) -> region.isInRange(cell));
  }

  private static int lines(String text, int room) {
    int lines = 0;
    for (String paragraph : text.split("\n", -1)) {
      lines++;
      int used = 0;
      for (String word : paragraph.split(" ", -1)) {
        int needed = used == 0 ? word.length() : used + 1 + word.length();
        if (needed > room && used > 0) {
          lines++;
          needed = word.length();
        }
        lines += needed / (room + 1);
        used = needed % (room + 1);
      }
    }
    return text.isEmpty() ? 0 : lines;
  }
}
