package org.cotyla.issue;

/**
 * A cell of a workbook.
 *
 * @param sheet the sheet's name as its tab shows it
 * @param row the row, counted from 0
 * @param column the column, counted from 0
 */
public record CellRef(String sheet, int row, int column) implements Place, Comparable<CellRef> {

  /** The cell as spreadsheet programs name it, for example {@code Defect class!C9}. */
  @Override
  public String plain() {
    return sheet + "!" + columnLetters(column) + (row + 1);
  }

  private static String columnLetters(int column) {
    StringBuilder letters = new StringBuilder();
    for (int rest = column; rest >= 0; rest = rest / 26 - 1) {
      letters.insert(0, (char) ('A' + rest % 26));
    }
    return letters.toString();
  }

  @Override
  public int compareTo(CellRef other) {
    int order = sheet.compareTo(other.sheet);
    if (order == 0) {
      order = Integer.compare(row, other.row);
    }
    return order != 0 ? order : Integer.compare(column, other.column);
  }

  @Override
  public String toString() {
    return plain();
  }
}
