package org.cotyla.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The first sheet of a workbook that has content, as plain rows of text: one row of headings and a
 * row for each thing. The file is untrusted input like any workbook, and its sizes are limited.
 *
 * @param rows the rows that have content, from the top; never empty
 */
public record RowSheet(List<Row> rows) {

  /**
   * A row.
   *
   * @param number its number as a spreadsheet program shows it
   * @param cells from the first column to the last that has content
   * @param fault why a cell of it cannot be used
   */
  public record Row(int number, List<String> cells, Optional<String> fault) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  public RowSheet {
    rows = List.copyOf(rows);
  }

  /**
   * Reads the rows from the bytes of a workbook.
   *
   * @param name what to call the file in messages
   * @throws org.cotyla.issue.RejectedException when it cannot be read
   */
  public static RowSheet read(String name, byte[] file) {
    Sheet sheet =
        GridReader.read(name, file).sheets().stream()
            .filter(one -> !one.rows().isEmpty())
            .findFirst()
            .orElseThrow(
                () -> new Refusal(name).because("W050", "no sheet of the workbook has any row"));
    return new RowSheet(sheet.rows().stream().map(RowSheet::row).toList());
  }

  private static Row row(GridRow row) {
    List<String> cells = new ArrayList<>();
    for (int column = 0; column <= row.cells().lastKey(); column++) {
      cells.add(row.cell(column).text());
    }
    Optional<String> fault =
        row.cells().values().stream()
            .flatMap(
                cell -> cell.fault().map(why -> cell.at().plain() + ": " + why.message()).stream())
            .findFirst();
    return new Row(row.index() + 1, cells, fault);
  }
}
