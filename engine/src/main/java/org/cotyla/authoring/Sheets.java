package org.cotyla.authoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.cotyla.draft.Headings;
import org.cotyla.name.Names;

/** Finds the tables of a workbook by their headings. */
final class Sheets {

  private static final int LONGEST_WORD = 60;
  private static final int FIRST_ROWS = 50;

  private Sheets() {}

  /**
   * A table.
   *
   * @param kind the sheet's name as the format spells it, or {@code decision}
   * @param headingRow the row of headings, counted from 0
   * @param namesRow the row of names beneath it, or -1
   * @param columns the columns that have a heading
   */
  record Table(String kind, Sheet sheet, int headingRow, int namesRow, List<Column> columns) {

    int firstRow() {
      return Math.max(headingRow, namesRow) + 1;
    }

    List<Column> headed(String heading) {
      return columns.stream().filter(column -> column.says(heading)).toList();
    }
  }

  /** A column, its heading and the name beneath it, empty when it has none. */
  record Column(int index, String heading, String name) {
    boolean says(String word) {
      return Names.key(heading).equals(Names.key(word));
    }
  }

  static Optional<Table> table(Sheet sheet, boolean isDecision) {
    if (isDecision) {
      return named("decision", sheet, "id");
    }
    return switch (Names.key(sheet.getSheetName())) {
      case "safeguards" -> named("Safeguards", sheet, "id");
      case "cases" -> named("Cases", sheet, "case");
      case "fields" -> headed("Fields", sheet, Headings.FIELDS);
      case "options" -> headed("Options", sheet, Headings.OPTIONS);
      case "calculations" -> headed("Calculations", sheet, Headings.CALCULATIONS);
      case "sources" -> headed("Sources", sheet, Headings.SOURCES);
      case "changes" -> headed("Changes", sheet, Headings.CHANGES);
      case "accepted" -> headed("Accepted", sheet, Headings.ACCEPTED);
      default -> Optional.empty();
    };
  }

  private static Optional<Table> named(String kind, Sheet sheet, String key) {
    for (Row row : sheet) {
      Optional<Cell> first = firstCell(row);
      if (first.filter(cell -> says(cell, key)).isPresent()) {
        int names = nextRow(sheet, row.getRowNum());
        return Optional.of(new Table(kind, sheet, row.getRowNum(), names, columns(row, names)));
      }
    }
    return Optional.empty();
  }

  private static Optional<Table> headed(String kind, Sheet sheet, List<String> headings) {
    for (Row row : sheet) {
      long known = 0;
      for (Cell cell : row) {
        known += headings.stream().anyMatch(word -> says(cell, word)) ? 1 : 0;
      }
      if (known >= 2) {
        return Optional.of(new Table(kind, sheet, row.getRowNum(), -1, columns(row, -1)));
      }
      if (row.getRowNum() > FIRST_ROWS) {
        break;
      }
    }
    return Optional.empty();
  }

  private static int nextRow(Sheet sheet, int after) {
    for (int i = after + 1; i <= sheet.getLastRowNum(); i++) {
      Row row = sheet.getRow(i);
      if (row != null && firstCell(row).isPresent()) {
        return i;
      }
    }
    return after + 1;
  }

  private static List<Column> columns(Row headings, int namesRow) {
    Row names = namesRow < 0 ? null : headings.getSheet().getRow(namesRow);
    List<Column> columns = new ArrayList<>();
    for (Cell cell : headings) {
      if (!text(cell).isEmpty()) {
        Cell name = names == null ? null : names.getCell(cell.getColumnIndex());
        columns.add(new Column(cell.getColumnIndex(), text(cell), name == null ? "" : text(name)));
      }
    }
    return columns;
  }

  private static Optional<Cell> firstCell(Row row) {
    for (Cell cell : row) {
      if (!text(cell).isEmpty()) {
        return Optional.of(cell);
      }
    }
    return Optional.empty();
  }

  static boolean says(Cell cell, String word) {
    String text = text(cell);
    return text.length() <= LONGEST_WORD && Names.key(text).equals(Names.key(word));
  }

  /** What people see in the cell. */
  static String text(Cell cell) {
    DataFormatter formatter = new DataFormatter(java.util.Locale.ROOT);
    formatter.setUseCachedValuesForFormulaCells(true);
    return formatter.formatCellValue(cell).strip();
  }
}
