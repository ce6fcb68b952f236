package org.cotyla.caseform;

import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Room for wrapped words, estimated from the width of an ordinary letter: not every program finds a
 * row's height by itself, and none does for a merged cell.
 */
final class RowHeight {

  /** The columns' widths in characters. */
  static final List<Integer> WIDTHS = List.of(22, 15, 8, 25, 44);

  static final int UNITS_PER_CHARACTER = 256;

  /** How many small letters go into a column, for each character of its width and each point. */
  private static final double LETTERS = 14;

  private static final double LINE = 1.22;
  private static final float PADDING = 3.5f;
  private static final float LEAST = 15;

  private RowHeight() {}

  /** Sets the height for the cells of the row, each in its own column. */
  static void fit(XSSFRow row) {
    float height = LEAST;
    for (Cell cell : row) {
      height = Math.max(height, height(cell, WIDTHS.get(cell.getColumnIndex())));
    }
    row.setHeightInPoints(height);
  }

  /** Sets the height for the words in a cell that goes over all columns. */
  static void fitOverAll(XSSFRow row) {
    int width = WIDTHS.stream().mapToInt(Integer::intValue).sum();
    row.setHeightInPoints(Math.max(LEAST, height(row.getCell(0), width)));
  }

  private static float height(Cell cell, int width) {
    XSSFWorkbook workbook = (XSSFWorkbook) cell.getSheet().getWorkbook();
    int points = workbook.getFontAt(cell.getCellStyle().getFontIndex()).getFontHeightInPoints();
    int lines = lines(cell.getStringCellValue(), (int) (width * LETTERS / points));
    return (float) (lines * points * LINE) + PADDING;
  }

  private static int lines(String words, int room) {
    int lines = 1;
    int used = 0;
    for (String word : words.split(" ", -1)) {
      int needed = used == 0 ? word.length() : used + 1 + word.length();
      if (needed > room && used > 0) {
        lines++;
        needed = word.length();
      }
      lines += needed / (room + 1);
      used = needed % (room + 1);
    }
    return lines;
  }
}
