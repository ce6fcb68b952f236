package org.cotyla.draft;

import java.util.Map;
import org.cotyla.issue.CellRef;

/**
 * One row of a sheet that has headings.
 *
 * @param at the row's first cell
 * @param cells each cell by its heading, spelt as the format spells it; blank cells are there as
 *     blank texts
 */
public record Line(CellRef at, Map<String, Text> cells) {

  public Line {
    cells = Map.copyOf(cells);
  }

  /** The cell under the heading; blank when the sheet has no such column. */
  public Text get(String heading) {
    return cells.getOrDefault(heading, new Text("", at));
  }
}
