package org.cotyla.workbook;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cotyla.draft.Headings;

/**
 * A workbook as text that version control can compare: a line for each cell, under its row's id or
 * name. No line numbers and no aligned columns stand in it, so that a change of one cell changes
 * one line. A workbook with faults is shown as well, since it is in drafts that people look for
 * differences.
 */
public final class WorkbookText {

  private static final int FIRST_ROWS = 50;

  private final StringBuilder text = new StringBuilder();

  private WorkbookText() {}

  /**
   * The text of a workbook's bytes.
   *
   * @param name what to call the file in messages
   * @throws org.cotyla.issue.RejectedException when the file cannot be read at all
   */
  public static String of(String name, byte[] workbook) {
    WorkbookText shown = new WorkbookText();
    GridReader.read(name, workbook).sheets().forEach(shown::sheet);
    return shown.text.toString();
  }

  /** The text of a workbook file. */
  public static String of(Path file, byte[] workbook) {
    return of(String.valueOf(file.getFileName()), workbook);
  }

  private void sheet(Sheet sheet) {
    if (!text.isEmpty()) {
      text.append('\n');
    }
    line("== " + sheet.name() + (sheet.hidden() ? " (hidden)" : ""));
    Optional<ShownTable> table = table(sheet);
    int first = table.map(ShownTable::firstRow).orElse(Integer.MAX_VALUE);
    int headings = table.map(ShownTable::headingRow).orElse(Integer.MAX_VALUE);
    for (GridRow row : sheet.rows()) {
      if (row.index() < headings) {
        line(inOneLine(row));
      } else if (row.index() >= first) {
        table.get().row(row).forEach(this::line);
      } else if (row.index() == headings) {
        line(table.get().columns());
      }
    }
  }

  /** The table of the sheet, when it has one that the format knows. */
  private static Optional<ShownTable> table(Sheet sheet) {
    List<GridRow> rows = sheet.rows().stream().limit(FIRST_ROWS).toList();
    for (GridRow row : rows) {
      boolean twoRows =
          Stream.of("id", "case").anyMatch(key -> CellReading.says(row.first(), key))
              && Stream.of("when", "then", "given", "expect").anyMatch(word -> has(row, word));
      if (twoRows) {
        return Optional.of(ShownTable.withNames(row, next(sheet, row)));
      }
    }
    return rows.stream()
        .filter(row -> headings().anyMatch(known -> count(row, known) >= 2))
        .findFirst()
        .map(row -> ShownTable.withHeadings(row));
  }

  private static Stream<List<String>> headings() {
    return Stream.of(
        Headings.FIELDS,
        Headings.OPTIONS,
        Headings.CALCULATIONS,
        Headings.SOURCES,
        Headings.CHANGES,
        Headings.ACCEPTED);
  }

  private static long count(GridRow row, List<String> words) {
    return row.cells().values().stream().filter(cell -> CellReading.saysOneOf(cell, words)).count();
  }

  private static boolean has(GridRow row, String word) {
    return row.cells().values().stream().anyMatch(cell -> CellReading.says(cell, word));
  }

  private static Optional<GridRow> next(Sheet sheet, GridRow row) {
    int at = sheet.rows().indexOf(row) + 1;
    return at < sheet.rows().size() ? Optional.of(sheet.rows().get(at)) : Optional.empty();
  }

  private static String inOneLine(GridRow row) {
    List<Cell> cells = List.copyOf(row.cells().values());
    String rest =
        cells.stream().skip(1).map(ShownTable::content).collect(Collectors.joining(" | "));
    String first = ShownTable.content(cells.get(0));
    return (rest.isEmpty() ? first : first + ": " + rest) + ShownTable.hidden(row);
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }
}
