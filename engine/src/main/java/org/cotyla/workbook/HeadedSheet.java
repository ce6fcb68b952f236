package org.cotyla.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.cotyla.draft.Headings;
import org.cotyla.draft.Line;
import org.cotyla.draft.Text;
import org.cotyla.issue.Issues;

/**
 * A kind of sheet that has one row of headings and a row for each thing.
 *
 * @param name the sheet's name
 * @param required whether every workbook has it
 * @param headings its headings
 * @param dispensable those of the headings that may be left out
 * @param noDates the headings under which a date is most likely a mishap
 */
record HeadedSheet(
    String name,
    boolean required,
    List<String> headings,
    Set<String> dispensable,
    Set<String> noDates) {

  private static final int FIRST_ROWS = 50;

  static final HeadedSheet FIELDS =
      new HeadedSheet(
          "Fields",
          true,
          Headings.FIELDS,
          Set.of("usual", "group", "measurement error"),
          Set.of("allowed", "usual", "measurement error"));
  static final HeadedSheet OPTIONS =
      new HeadedSheet(
          "Options", false, Headings.OPTIONS, Set.of("needs", "lead time"), Set.of("lead time"));
  static final HeadedSheet CALCULATIONS =
      new HeadedSheet("Calculations", false, Headings.CALCULATIONS, Set.of(), Set.of("expression"));
  static final HeadedSheet SOURCES =
      new HeadedSheet("Sources", true, Headings.SOURCES, Set.of("year"), Set.of("year"));
  static final HeadedSheet CHANGES =
      new HeadedSheet(
          "Changes",
          false,
          Headings.CHANGES,
          Set.of("author role", "why", "retired ids"),
          Set.of("version", "retired ids"));
  static final HeadedSheet ACCEPTED =
      new HeadedSheet("Accepted", false, Headings.ACCEPTED, Set.of("date"), Set.of("about"));

  static final HeadedSheet PICTURES =
      new HeadedSheet(
          "Pictures", false, Headings.PICTURES, Set.of("page", "label"), Set.of("shows"));

  static final HeadedSheet REASONS =
      new HeadedSheet("Reasons", false, Headings.REASONS, Set.of(), Set.of());
  static final HeadedSheet OUTCOMES =
      new HeadedSheet("Outcomes", false, Headings.OUTCOMES, Set.of(), Set.of());

  /** The sheet's rows; nothing when its headings are wrong, which is reported. */
  Optional<List<Line>> read(Sheet sheet, Issues issues) {
    Optional<GridRow> headingRow = headingRow(sheet);
    if (headingRow.isEmpty()) {
      issues.error(
          "W035",
          sheet.corner(),
          "no row of the sheet holds its headings",
          "write them in one row: " + String.join(", ", headings));
      return Optional.empty();
    }
    return columns(headingRow.get(), issues)
        .map(columns -> lines(sheet, headingRow.get(), columns, issues));
  }

  /** The first row with two headings, or else the first with two that nearly are. */
  private Optional<GridRow> headingRow(Sheet sheet) {
    return firstRowWithTwo(sheet, this::isHeading)
        .or(() -> firstRowWithTwo(sheet, cell -> isHeading(cell) || isNearly(cell)));
  }

  private static Optional<GridRow> firstRowWithTwo(Sheet sheet, Predicate<Cell> wanted) {
    return sheet.rows().stream()
        .limit(FIRST_ROWS)
        .filter(row -> row.cells().values().stream().filter(wanted).count() >= 2)
        .findFirst();
  }

  private boolean isHeading(Cell cell) {
    return CellReading.saysOneOf(cell, headings);
  }

  private boolean isNearly(Cell cell) {
    return NearMiss.of(cell.text(), headings).isPresent();
  }

  private Optional<Map<String, Integer>> columns(GridRow row, Issues issues) {
    Map<String, Integer> columns = new LinkedHashMap<>();
    List<Cell> others = new ArrayList<>();
    boolean sound = true;
    for (Cell cell : row.cells().values()) {
      Optional<String> heading =
          headings.stream().filter(known -> CellReading.says(cell, known)).findFirst();
      if (heading.isEmpty()) {
        others.add(cell);
      } else if (columns.putIfAbsent(heading.get(), cell.at().column()) != null) {
        issues.error("W036", cell.at(), "the heading `" + heading.get() + "` stands twice");
        sound = false;
      }
    }
    List<String> missing =
        new ArrayList<>(headings.stream().filter(name -> !columns.containsKey(name)).toList());
    for (Cell other : others) {
      Optional<String> meant = NearMiss.of(other.text(), missing);
      if (meant.isPresent()) {
        issues.error(
            "W037",
            other.at(),
            "`" + TidyText.shortened(other.text()) + "` is not a heading of the sheet " + name,
            "did you mean `" + meant.get() + "`?");
        // Reads on as if the heading were right, so that what else is wrong is found as well.
        missing.remove(meant.get());
        columns.put(meant.get(), other.at().column());
      }
    }
    missing.removeAll(dispensable);
    for (String heading : missing) {
      issues.error(
          "W038",
          row.first().at(),
          "no column is headed `" + heading + "`",
          "the headings are: " + String.join(", ", headings));
      sound = false;
    }
    return sound ? Optional.of(columns) : Optional.empty();
  }

  private List<Line> lines(
      Sheet sheet, GridRow headingRow, Map<String, Integer> columns, Issues issues) {
    CellReading reading = new CellReading(issues);
    List<Line> lines = new ArrayList<>();
    int first = columns.values().stream().min(Integer::compare).orElseThrow();
    List<GridRow> used =
        sheet.rows().stream()
            .filter(row -> row.index() > headingRow.index())
            .filter(
                row -> columns.values().stream().anyMatch(column -> !row.cell(column).isBlank()))
            .toList();
    MergedCells.check(sheet, used, columns.values(), issues);
    for (GridRow row : used) {
      Map<String, Text> cells = new HashMap<>();
      columns.forEach(
          (heading, column) -> {
            Cell cell = row.cell(column);
            cells.put(
                heading,
                noDates.contains(heading) ? reading.textNotMadeDate(cell) : reading.text(cell));
          });
      lines.add(new Line(row.cell(first).at(), cells));
    }
    return lines;
  }
}
