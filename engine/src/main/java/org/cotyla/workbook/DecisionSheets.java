package org.cotyla.workbook;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cotyla.issue.Issues;

/**
 * Tells decision sheets from sheets for people, and from decision sheets with a slip of the pen.
 */
final class DecisionSheets {

  private static final int FIRST_ROWS = 20;

  private DecisionSheets() {}

  /** Whether a row starts with the key {@code decision} and the sheet goes on as decisions do. */
  static boolean is(Sheet sheet) {
    List<GridRow> rows = firstRows(sheet).toList();
    return rows.stream().anyMatch(row -> CellReading.says(row.first(), "decision"))
        && (CellReading.says(rows.get(0).first(), "decision")
            || rows.stream().anyMatch(row -> CellReading.says(row.first(), "hit policy"))
            || rows.stream().anyMatch(row -> CellReading.says(row.first(), "id")));
  }

  /**
   * Refuses a sheet that is not read but was probably meant to be; says of any other with content
   * that it is not read.
   */
  static boolean refuseSlip(Sheet sheet, Issues issues) {
    Optional<Cell> slip =
        firstRows(sheet)
            .filter(DecisionSheets::nearlyStartsDecision)
            .map(GridRow::first)
            .findFirst();
    if (slip.isPresent()) {
      Cell cell = slip.get();
      issues.error(
          "W040",
          cell.at(),
          "the sheet is not read: `" + TidyText.shortened(cell.text()) + "` stands here",
          "did you mean `"
              + meant(cell)
              + "`? a decision sheet starts with a row: decision, its name");
      return true;
    }
    Optional<GridRow> table = firstRows(sheet).filter(DecisionSheets::headsTable).findFirst();
    if (table.isPresent()) {
      issues.error(
          "W040",
          table.get().first().at(),
          "the sheet is not read: here starts a table, but no row above starts with `decision`",
          "a decision sheet starts with a row: decision, its name");
      return true;
    }
    if (!sheet.rows().isEmpty()) {
      issues.note(
          "W041", sheet.corner(), "the sheet is not read, since it does not start with `decision`");
    }
    return false;
  }

  /** Whether the row heads tests and results. */
  static boolean headsTable(GridRow row) {
    return Stream.of("when", "then")
        .allMatch(
            word -> row.cells().values().stream().anyMatch(cell -> CellReading.says(cell, word)));
  }

  private static boolean nearlyStartsDecision(GridRow row) {
    Cell cell = row.first();
    boolean hasValue = row.after(cell.at().column()).isPresent();
    return hasValue
        && (CellReading.says(cell, "hit policy")
            || NearMiss.of(cell.text(), List.of("decision", "hit policy")).isPresent());
  }

  private static String meant(Cell cell) {
    return NearMiss.of(cell.text(), List.of("decision", "hit policy")).orElse("decision");
  }

  private static Stream<GridRow> firstRows(Sheet sheet) {
    return sheet.rows().stream().limit(FIRST_ROWS);
  }
}
