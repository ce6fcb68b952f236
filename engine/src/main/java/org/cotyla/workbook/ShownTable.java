package org.cotyla.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A table of a sheet as text: a block for each row, a line for each cell.
 *
 * @param headingRow the row of its headings
 * @param firstRow the first row of content
 * @param key the column whose cell heads each block
 * @param labels what each column is called
 * @param tests the columns whose dashes say nothing
 */
record ShownTable(
    int headingRow, int firstRow, int key, Map<Integer, String> labels, List<Integer> tests) {

  static ShownTable withHeadings(GridRow headings) {
    Map<Integer, String> labels = new TreeMap<>();
    headings.cells().forEach((column, cell) -> labels.put(column, content(cell)));
    int key = headings.cells().firstKey();
    return new ShownTable(headings.index(), headings.index() + 1, key, labels, List.of());
  }

  static ShownTable withNames(GridRow headings, Optional<GridRow> below) {
    int key = headings.cells().firstKey();
    Optional<GridRow> names = below.filter(row -> row.cell(key).isBlank());
    Map<Integer, String> labels = new TreeMap<>();
    headings.cells().forEach((column, cell) -> labels.put(column, content(cell)));
    names.ifPresent(
        row ->
            row.cells()
                .forEach(
                    (column, cell) -> labels.merge(column, content(cell), (a, b) -> a + " " + b)));
    List<Integer> tests =
        headings.cells().values().stream()
            .filter(cell -> CellReading.saysOneOf(cell, List.of("when", "given", "expect")))
            .map(cell -> cell.at().column())
            .toList();
    int first = names.map(GridRow::index).orElse(headings.index()) + 1;
    return new ShownTable(headings.index(), first, key, labels, tests);
  }

  /** The columns, since to add or move one is a change as well. */
  String columns() {
    return labels.values().stream().collect(Collectors.joining(" | ", "columns: ", ""));
  }

  /** The lines of one row. A dash under a test says nothing and is left out, a blank is said. */
  List<String> row(GridRow row) {
    List<String> lines = new ArrayList<>();
    lines.add("");
    lines.add("[" + content(row.cell(key)) + "]" + hidden(row));
    labels.forEach(
        (column, label) -> {
          Cell cell = row.cell(column);
          boolean silent = tests.contains(column) ? cell.text().equals("-") : cell.isBlank();
          if (column != key && !silent) {
            lines.add("  " + label + ": " + content(cell));
          }
        });
    Stream<Cell> others =
        row.cells().entrySet().stream()
            .filter(entry -> !labels.containsKey(entry.getKey()))
            .map(Map.Entry::getValue);
    others.forEach(cell -> lines.add("  (no heading): " + content(cell)));
    return lines;
  }

  static String hidden(GridRow row) {
    return row.hidden() ? " (hidden)" : "";
  }

  /** What stands in a cell, on one line; a cell that cannot be read says why. */
  static String content(Cell cell) {
    StringBuilder line = new StringBuilder();
    cell.text().codePoints().forEach(character -> append(line, character));
    cell.fault().ifPresent(fault -> line.append(" (").append(fault.message()).append(')'));
    return line.isEmpty() ? "(blank)" : line.toString();
  }

  private static void append(StringBuilder line, int character) {
    switch (character) {
      case '\\' -> line.append("\\\\");
      case '\n' -> line.append("\\n");
      case '\r' -> line.append("\\r");
      case '\t' -> line.append("\\t");
      default -> {
        boolean steers =
            Character.isISOControl(character)
                || Character.getType(character) == Character.FORMAT
                || Character.getType(character) == Character.SURROGATE
                || Character.getType(character) == Character.LINE_SEPARATOR
                || Character.getType(character) == Character.PARAGRAPH_SEPARATOR;
        if (steers) {
          line.append(String.format("\\u%04x", character));
        } else {
          line.appendCodePoint(character);
        }
      }
    }
  }
}
