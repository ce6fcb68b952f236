package org.cotyla.workbook;

import java.util.List;

/**
 * A whole workbook as cells of text. Immutable.
 *
 * @param origin the file's name
 * @param sheets in the order of the tabs
 */
record Grid(String origin, List<Sheet> sheets) {

  Grid {
    sheets = List.copyOf(sheets);
  }
}
