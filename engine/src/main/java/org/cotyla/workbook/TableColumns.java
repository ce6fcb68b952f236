package org.cotyla.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cotyla.draft.Headings;
import org.cotyla.draft.Text;
import org.cotyla.issue.Issues;

/**
 * Which columns of a table are read, and as what.
 *
 * @param key the column that identifies a row
 * @param named the columns under each heading that is shared and told apart by names beneath
 * @param plain the column under each other heading that the sheet has
 */
record TableColumns(int key, Map<String, List<Column>> named, Map<String, Integer> plain) {

  /** A column of tests or results and the name beneath its heading. */
  record Column(int index, Text name) {}

  /**
   * A kind of sheet that holds such a table.
   *
   * @param sheet what messages call it
   * @param headings its headings in the usual order; the first starts the row of headings
   * @param named those of the headings that are shared
   * @param dispensable those of the other headings that may be left out
   */
  record Layout(String sheet, List<String> headings, List<String> named, Set<String> dispensable) {

    static final Layout DECISION =
        new Layout("decision sheet", Headings.DECISION_COLUMNS, List.of("when", "then"), Set.of());
    static final Layout SAFEGUARDS =
        new Layout("sheet Safeguards", Headings.SAFEGUARDS, List.of("when"), Set.of());
    static final Layout CASES =
        new Layout(
            "sheet Cases", Headings.CASES, List.of("given", "expect"), Set.of("stage", "because"));

    String key() {
      return headings.get(0);
    }

    List<String> plain() {
      return headings.stream().skip(1).filter(heading -> !named.contains(heading)).toList();
    }

    boolean required(String heading) {
      return !dispensable.contains(heading);
    }
  }

  List<Integer> besidesKey() {
    return Stream.concat(
            named.values().stream().flatMap(List::stream).map(Column::index),
            plain.values().stream())
        .toList();
  }

  /** Every column that is read. */
  List<Integer> all() {
    return Stream.concat(Stream.of(key), besidesKey().stream()).toList();
  }

  List<Text> names(String heading) {
    return under(heading).stream().map(Column::name).toList();
  }

  List<Column> under(String heading) {
    return named.getOrDefault(heading, List.of());
  }

  /** The columns; nothing when the headings are wrong, which is reported. */
  static Optional<TableColumns> read(
      Layout layout, GridRow keyRow, List<GridRow> below, CellReading reading, Issues issues) {
    return new Search(layout, keyRow, reading, issues).columns(below);
  }

  private static final String NOTE = "note";

  private static final class Search {
    private final Layout layout;
    private final GridRow keyRow;
    private final CellReading reading;
    private final Issues issues;
    private boolean sound = true;

    Search(Layout layout, GridRow keyRow, CellReading reading, Issues issues) {
      this.layout = layout;
      this.keyRow = keyRow;
      this.reading = reading;
      this.issues = issues;
    }

    Optional<TableColumns> columns(List<GridRow> below) {
      Map<String, List<Cell>> shared = new LinkedHashMap<>();
      Map<String, List<Cell>> single = new LinkedHashMap<>();
      layout.plain().forEach(word -> single.put(word, headed(word)));
      layout.named().forEach(word -> shared.put(word, headed(word)));
      int key = keyRow.first().at().column();
      refuseSlips();
      refuseSecond(headed(layout.key()));
      single.values().forEach(this::refuseSecond);
      if (below.isEmpty() || !below.get(0).cell(key).isBlank()) {
        fault(
            "W045",
            below.isEmpty() ? keyRow.first() : below.get(0).cell(key),
            "beneath the row that starts with `" + layout.key() + "` stands no row of names",
            "write there what each column "
                + (layout == Layout.DECISION ? "tests or gives" : "is about")
                + ", and leave the cell beneath `"
                + layout.key()
                + "` blank");
        return Optional.empty();
      }
      GridRow names = below.get(0);
      Map<String, List<Column>> columns = new LinkedHashMap<>();
      shared.forEach((word, cells) -> columns.put(word, named(cells, names)));
      refuseStrayNames(names);
      if (shared.values().stream().noneMatch(List::isEmpty)) {
        refuseUnreadNames(names);
      }
      if (!sound) {
        return Optional.empty();
      }
      Map<String, Integer> plain = new LinkedHashMap<>();
      single.forEach((word, cells) -> cells.forEach(cell -> plain.put(word, cell.at().column())));
      return Optional.of(new TableColumns(key, columns, plain));
    }

    private List<Cell> headed(String word) {
      List<Cell> cells =
          keyRow.cells().values().stream().filter(cell -> CellReading.says(cell, word)).toList();
      if (cells.isEmpty()
          && layout.required(word)
          && slips().noneMatch(slip -> slip.meant().equals(word))) {
        fault(
            "W043",
            keyRow.first(),
            "no column of the " + layout.sheet() + " is headed `" + word + "`",
            "the headings are: " + String.join(", ", layout.headings()));
      }
      return cells;
    }

    private record Slip(Cell cell, String meant) {}

    private Stream<Slip> slips() {
      // There may be many columns of tests and results, so one more is always missing perhaps.
      List<String> missing =
          layout.headings().stream()
              .filter(
                  word ->
                      layout.named().contains(word)
                          || keyRow.cells().values().stream()
                              .noneMatch(cell -> CellReading.says(cell, word)))
              .toList();
      return keyRow.cells().values().stream()
          .filter(cell -> !CellReading.saysOneOf(cell, layout.headings()))
          .flatMap(
              cell ->
                  NearMiss.of(cell.text(), missing).map(meant -> new Slip(cell, meant)).stream());
    }

    private void refuseSlips() {
      slips()
          .forEach(
              slip ->
                  fault(
                      "W044",
                      slip.cell(),
                      "`"
                          + TidyText.shortened(slip.cell().text())
                          + "` is not a heading of a "
                          + layout.sheet(),
                      "did you mean `" + slip.meant() + "`? head a column for people `note`"));
    }

    private void refuseSecond(List<Cell> cells) {
      cells.stream()
          .skip(1)
          .forEach(
              cell ->
                  fault(
                      "W036",
                      cell,
                      "the heading `" + cell.text() + "` stands twice",
                      "name all in one column"));
    }

    private List<Column> named(List<Cell> headings, GridRow names) {
      List<Column> columns = new ArrayList<>();
      for (Cell heading : headings) {
        Cell name = names.cell(heading.at().column());
        if (name.isBlank()) {
          fault(
              "W046",
              name,
              "a column headed `" + heading.text() + "` has no name beneath",
              layout == Layout.DECISION
                  ? "write the name of what it tests or gives"
                  : "write the name of what it is about");
        }
        columns.add(new Column(heading.at().column(), reading.text(name)));
      }
      return columns;
    }

    /** A merged heading covers several columns but stands in the first only. */
    private void refuseStrayNames(GridRow names) {
      for (Cell name : names.cells().values()) {
        if (keyRow.cell(name.at().column()).isBlank()) {
          fault(
              "W047",
              name,
              "`" + TidyText.shortened(name.text()) + "` has no heading above it",
              "write "
                  + String.join(
                      ", ", layout.named().stream().map(word -> "`" + word + "`").toList())
                  + " or `note` in the cell above; a merged heading counts for its first"
                  + " column only");
        }
      }
    }

    /** A column that is headed by no known word is not read, so nothing may be named beneath. */
    private void refuseUnreadNames(GridRow names) {
      Set<Cell> told = slips().map(Slip::cell).collect(Collectors.toSet());
      for (Cell heading : keyRow.cells().values()) {
        Cell name = names.cell(heading.at().column());
        boolean read = CellReading.saysOneOf(heading, layout.headings());
        boolean note = heading.isBlank() || CellReading.says(heading, NOTE);
        if (!read && !note && !name.isBlank() && !told.contains(heading)) {
          String words =
              layout.named().stream()
                  .map(word -> "`" + word + "`")
                  .collect(Collectors.joining(" or "));
          fault(
              "W039",
              heading,
              "`"
                  + TidyText.shortened(heading.text())
                  + "` is not a heading of a "
                  + layout.sheet()
                  + ", but `"
                  + TidyText.shortened(name.text())
                  + "` is named beneath it",
              "write " + words + "; head a column for people `note`");
        }
      }
    }

    private void fault(String code, Cell cell, String message, String help) {
      issues.error(code, cell.at(), message, help);
      sound = false;
    }
  }
}
