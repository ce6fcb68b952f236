package org.cotyla.workbook;

import java.util.List;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Issues;

/** Looks into the grid and the draft of a workbook. */
final class GridText {

  private final Grid grid;

  GridText(byte[] workbook) {
    this.grid = GridReader.read("rods.xlsx", workbook);
  }

  /** What stands in the cell at a place such as {@code Grading!B7}. */
  String at(String place) {
    return grid.sheets().stream()
        .flatMap(sheet -> sheet.rows().stream())
        .flatMap(row -> row.cells().values().stream())
        .filter(cell -> cell.at().plain().equals(place))
        .map(Cell::text)
        .findFirst()
        .orElse("");
  }

  /** What the sheets' readers remark on, before the cells' meaning is looked at. */
  List<String> remarks() {
    Issues issues = new Issues();
    DraftReader.read(grid, issues);
    return issues.list().stream().map(Issue::plain).toList();
  }
}
