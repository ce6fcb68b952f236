package org.cotyla.trial;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cotyla.issue.CellRef;
import org.cotyla.protocol.Row;

/**
 * Where an answer is not as it should be.
 *
 * @param about what it is about
 * @param expected what it should be
 * @param got what it is
 * @param rows the rows that decided what it is
 * @param expectedAt the cell that says what it should be, when it stands in a workbook
 */
public record Difference(
    String about, String expected, String got, List<Row> rows, Optional<CellRef> expectedAt) {

  private static final int MOST_ROWS = 6;

  public Difference {
    rows = List.copyOf(rows);
  }

  Difference(String about, String expected, String got, List<Row> rows) {
    this(about, expected, got, rows, Optional.empty());
  }

  static Difference of(String about, String expected, String got) {
    return new Difference(about, expected, got, List.of());
  }

  Difference expectedAt(Optional<CellRef> cell) {
    return new Difference(about, expected, got, rows, cell);
  }

  /** The difference in one sentence, with its cell, and the rows that decided and theirs. */
  public String plain() {
    String place = expectedAt.map(cell -> cell.plain() + ": ").orElse("");
    String line = place + about + ": expected " + expected + ", got " + got;
    if (rows.isEmpty()) {
      return line;
    }
    String more = rows.size() > MOST_ROWS ? " and " + (rows.size() - MOST_ROWS) + " more" : "";
    return rows.stream()
        .limit(MOST_ROWS)
        .map(row -> row.id() + " at " + row.at().plain())
        .collect(Collectors.joining(", ", line + "; by ", more));
  }
}
