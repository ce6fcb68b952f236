package org.cotyla.workbook;

import java.util.List;
import java.util.Set;
import org.cotyla.issue.CellRef;

/**
 * A sheet of the grid.
 *
 * @param name what its tab shows
 * @param hidden whether its tab is hidden
 * @param rows the rows that have content, from the top
 * @param hiddenColumns the columns that are hidden and have content
 * @param merged cells that are shown as one
 */
record Sheet(
    String name,
    boolean hidden,
    List<GridRow> rows,
    Set<Integer> hiddenColumns,
    List<MergedCells> merged) {

  Sheet {
    rows = List.copyOf(rows);
    hiddenColumns = Set.copyOf(hiddenColumns);
    merged = List.copyOf(merged);
  }

  /** The sheet's top left cell, the place of a fault of the whole sheet. */
  CellRef corner() {
    return new CellRef(name, 0, 0);
  }
}
