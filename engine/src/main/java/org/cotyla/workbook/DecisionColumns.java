package org.cotyla.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cotyla.draft.Headings;
import org.cotyla.draft.Text;
import org.cotyla.issue.Issues;

/** Which columns of a decision sheet are read, and as what. */
record DecisionColumns(int id, List<Column> when, List<Column> then, int because, int source) {

  /** A column of tests or results and the name beneath its heading. */
  record Column(int index, Text name) {}

  Stream<Integer> allBesidesId() {
    return Stream.of(
            when.stream().map(Column::index),
            then.stream().map(Column::index),
            Stream.of(because, source))
        .flatMap(columns -> columns);
  }

  List<Integer> besidesId() {
    return allBesidesId().toList();
  }

  /** The columns; nothing when the headings are wrong, which is reported. */
  static Optional<DecisionColumns> read(
      GridRow idRow, List<GridRow> below, CellReading reading, Issues issues) {
    return new Search(idRow, reading, issues).columns(below);
  }

  private static final class Search {
    private final GridRow idRow;
    private final CellReading reading;
    private final Issues issues;
    private boolean sound = true;

    Search(GridRow idRow, CellReading reading, Issues issues) {
      this.idRow = idRow;
      this.reading = reading;
      this.issues = issues;
    }

    Optional<DecisionColumns> columns(List<GridRow> below) {
      List<Cell> because = headed("because");
      List<Cell> source = headed("source");
      List<Cell> when = headed("when");
      List<Cell> then = headed("then");
      int id = idRow.first().at().column();
      refuseSlips();
      Stream.of(headed("id"), because, source).forEach(this::refuseSecond);
      if (below.isEmpty() || !below.get(0).cell(id).isBlank()) {
        fault(
            "W045",
            below.isEmpty() ? idRow.first() : below.get(0).cell(id),
            "beneath the row that starts with `id` stands no row of names",
            "write there what each column tests or gives, and leave the cell beneath `id` blank");
        return Optional.empty();
      }
      GridRow names = below.get(0);
      List<Column> tests = named(when, names);
      List<Column> results = named(then, names);
      refuseStrayNames(names);
      if (!sound) {
        return Optional.empty();
      }
      return Optional.of(new DecisionColumns(id, tests, results, index(because), index(source)));
    }

    private List<Cell> headed(String word) {
      List<Cell> cells =
          idRow.cells().values().stream().filter(cell -> CellReading.says(cell, word)).toList();
      if (cells.isEmpty() && slips().noneMatch(slip -> slip.meant().equals(word))) {
        fault(
            "W043",
            idRow.first(),
            "no column of the decision sheet is headed `" + word + "`",
            "the headings are: " + String.join(", ", Headings.DECISION_COLUMNS));
      }
      return cells;
    }

    private record Slip(Cell cell, String meant) {}

    private Stream<Slip> slips() {
      // There may be many columns of tests and results, so one more is always missing perhaps.
      List<String> missing =
          Headings.DECISION_COLUMNS.stream()
              .filter(
                  word ->
                      word.equals("when")
                          || word.equals("then")
                          || idRow.cells().values().stream()
                              .noneMatch(cell -> CellReading.says(cell, word)))
              .toList();
      return idRow.cells().values().stream()
          .filter(cell -> !CellReading.saysOneOf(cell, Headings.DECISION_COLUMNS))
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
                          + "` is not a heading of a decision sheet",
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
              "write the name of what it tests or gives");
        }
        columns.add(new Column(heading.at().column(), reading.text(name)));
      }
      return columns;
    }

    /** A merged heading covers several columns but stands in the first only. */
    private void refuseStrayNames(GridRow names) {
      for (Cell name : names.cells().values()) {
        if (idRow.cell(name.at().column()).isBlank()) {
          fault(
              "W047",
              name,
              "`" + TidyText.shortened(name.text()) + "` has no heading above it",
              "write `when`, `then` or `note` in the cell above; a merged heading counts for its first"
                  + " column only");
        }
      }
    }

    private void fault(String code, Cell cell, String message, String help) {
      issues.error(code, cell.at(), message, help);
      sound = false;
    }

    private static int index(List<Cell> cells) {
      return cells.get(0).at().column();
    }
  }
}
