package org.cotyla.workbook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cotyla.draft.Line;
import org.cotyla.draft.Text;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;

/**
 * A filled-in form as text with places: keys and their values above one row of headings, and a line
 * for each thing below it. The file is untrusted input like any workbook.
 *
 * @param keys the text beside each key that stands there, in the column of values
 * @param lines the rows below the headings
 */
public record FormSheet(Map<String, Text> keys, List<Line> lines) {

  /** The most bytes that are read of a file. */
  public static final int MOST_BYTES = Limits.FILE_BYTES;

  /**
   * How a form is laid out.
   *
   * @param sheet the name of its sheet, which may have been changed
   * @param keys what may stand above the headings
   * @param headings the headings; the first is of the names, the second of the values
   * @param dispensable headings whose column may be gone
   */
  public record Layout(
      String sheet, List<String> keys, List<String> headings, Set<String> dispensable) {
    public Layout {
      keys = List.copyOf(keys);
      headings = List.copyOf(headings);
      dispensable = Set.copyOf(dispensable);
    }
  }

  public FormSheet {
    keys = Map.copyOf(keys);
    lines = List.copyOf(lines);
  }

  /** Whether the bytes begin as those of a spreadsheet do, new or old, whatever the file's name. */
  public static boolean looksLikeWorkbook(byte[] file) {
    return startsWith(file, 'P', 'K') || startsWith(file, 0xD0, 0xCF, 0x11, 0xE0);
  }

  private static boolean startsWith(byte[] file, int... start) {
    for (int i = 0; i < start.length; i++) {
      if (i >= file.length || (file[i] & 0xFF) != start[i]) {
        return false;
      }
    }
    return true;
  }

  /**
   * Reads a form from the bytes of a workbook.
   *
   * @param name what to call the file in messages
   * @throws RejectedException with every fault of the file, each with its place
   */
  public static FormSheet read(String name, byte[] file, Layout layout) {
    Grid grid = GridReader.read(name, file);
    Issues issues = new Issues();
    Optional<FormSheet> form =
        sheet(grid, layout, issues).flatMap(sheet -> read(sheet, layout, issues));
    if (issues.hasErrors() || form.isEmpty()) {
      throw new RejectedException(issues.list());
    }
    return form.get();
  }

  /** The sheet by its name, or else the first that has the headings. */
  private static Optional<Sheet> sheet(Grid grid, Layout layout, Issues issues) {
    Optional<Sheet> sheet =
        grid.sheets().stream()
            .filter(one -> one.name().equalsIgnoreCase(layout.sheet()))
            .findFirst()
            .or(() -> grid.sheets().stream().filter(one -> hasHeadings(one, layout)).findFirst());
    if (sheet.isEmpty()) {
      issues.error(
          "W050",
          new Place.Whole(grid.origin()),
          "no sheet of the workbook is a form that can be read",
          "its sheet `"
              + layout.sheet()
              + "` has the headings: "
              + String.join(", ", layout.headings()));
    }
    return sheet;
  }

  private static boolean hasHeadings(Sheet sheet, Layout layout) {
    Collection<String> names = layout.headings().subList(0, 2);
    return sheet.rows().stream().anyMatch(row -> saysAll(row, names));
  }

  private static boolean saysAll(GridRow row, Collection<String> words) {
    return words.stream()
        .allMatch(
            word -> row.cells().values().stream().anyMatch(cell -> CellReading.says(cell, word)));
  }

  private static Optional<FormSheet> read(Sheet sheet, Layout layout, Issues issues) {
    HeadedSheet headed =
        new HeadedSheet(layout.sheet(), true, layout.headings(), layout.dispensable(), Set.of());
    return headed
        .read(sheet, issues)
        .map(lines -> new FormSheet(keys(sheet, layout, lines, issues), lines));
  }

  /** The value stands in the column of values; notes further to the right are for people. */
  private static Map<String, Text> keys(
      Sheet sheet, Layout layout, List<Line> lines, Issues issues) {
    Map<String, Text> keys = new LinkedHashMap<>();
    if (lines.isEmpty()) {
      return keys;
    }
    CellReading reading = new CellReading(issues);
    int column = lines.get(0).get(layout.headings().get(1)).at().column();
    List<GridRow> above = new ArrayList<>(sheet.rows());
    above.removeIf(row -> row.index() >= lines.get(0).at().row());
    for (GridRow row : above) {
      layout.keys().stream()
          .filter(key -> saysLeftOf(column, row, key))
          .forEach(key -> keys.putIfAbsent(key, reading.text(row.cell(column))));
    }
    return keys;
  }

  private static boolean saysLeftOf(int column, GridRow row, String key) {
    return row.cells().headMap(column).values().stream()
        .anyMatch(cell -> CellReading.says(cell, key));
  }
}
