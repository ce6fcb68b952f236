package org.cotyla.workbook;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.cotyla.issue.CellRef;

/**
 * A row that has content.
 *
 * @param cells the cells with content by column; never empty
 */
record GridRow(String sheet, int index, boolean hidden, SortedMap<Integer, Cell> cells) {

  GridRow {
    cells = Collections.unmodifiableSortedMap(new TreeMap<>(cells));
  }

  /** The cell in the column, blank when nothing stands there. */
  Cell cell(int column) {
    Cell cell = cells.get(column);
    return cell == null ? Cell.of(new CellRef(sheet, index, column), "") : cell;
  }

  Cell first() {
    return cell(cells.firstKey());
  }

  /** The next cell with content to the right of the column. */
  Optional<Cell> after(int column) {
    return cells.tailMap(column + 1).values().stream().findFirst();
  }
}
