package org.cotyla.workbook;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issues;

/**
 * Cells of a sheet that are shown as one. Only the first of them is seen, while each is read for
 * itself, so that in a table what people see is not what counts.
 *
 * @param first the one that is seen
 * @param last the one in the opposite corner
 */
record MergedCells(CellRef first, CellRef last) {

  /**
   * Says of the merged cells that touch a table what becomes of the others.
   *
   * @param rows the rows of the table
   * @param columns those of its columns that are read
   */
  static void check(Sheet sheet, List<GridRow> rows, Collection<Integer> columns, Issues issues) {
    for (MergedCells merged : sheet.merged()) {
      merged.hidden(rows, columns).ifPresent(hidden -> merged.report(hidden, issues));
    }
  }

  /** The first cell of the table that is not seen. */
  private Optional<Cell> hidden(List<GridRow> rows, Collection<Integer> columns) {
    List<Integer> across =
        columns.stream()
            .filter(column -> column >= first.column() && column <= last.column())
            .sorted()
            .toList();
    if (across.isEmpty()) {
      return Optional.empty();
    }
    return rows.stream()
        .filter(row -> row.index() >= first.row() && row.index() <= last.row())
        .filter(row -> !isHeading(row, columns))
        .flatMap(row -> across.stream().map(row::cell))
        .filter(cell -> !cell.at().equals(first))
        .findFirst();
  }

  /** A row of which nothing else is filled in says one thing, across as many cells as it likes. */
  private boolean isHeading(GridRow row, Collection<Integer> columns) {
    return row.index() == first.row()
        && columns.stream()
            .map(row::cell)
            .allMatch(cell -> cell.isBlank() || cell.at().equals(first));
  }

  private void report(Cell hidden, Issues issues) {
    String cells = "`" + inSheet(first) + ":" + inSheet(last) + "` is one merged cell";
    String help = "split it, and write into each cell what it says";
    if (hidden.isBlank()) {
      issues.error(
          "W029", first, cells + ", but " + inSheet(hidden.at()) + " is read as blank", help);
    } else {
      issues.warning(
          "W029",
          first,
          cells
              + " that hides `"
              + TidyText.shortened(hidden.text())
              + "` in "
              + inSheet(hidden.at())
              + ", which counts",
          help);
    }
  }

  private static String inSheet(CellRef cell) {
    return new CellRef("", cell.row(), cell.column()).plain().substring(1);
  }
}
