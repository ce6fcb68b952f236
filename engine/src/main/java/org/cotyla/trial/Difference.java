package org.cotyla.trial;

import java.util.List;
import java.util.stream.Collectors;
import org.cotyla.protocol.Row;

/**
 * Where an answer is not as it should be.
 *
 * @param about what it is about
 * @param expected what it should be
 * @param got what it is
 * @param rows the rows that decided what it is
 */
public record Difference(String about, String expected, String got, List<Row> rows) {

  private static final int MOST_ROWS = 6;

  public Difference {
    rows = List.copyOf(rows);
  }

  static Difference of(String about, String expected, String got) {
    return new Difference(about, expected, got, List.of());
  }

  /** The difference in one sentence, with the rows that decided and their cells. */
  public String plain() {
    String line = about + ": expected " + expected + ", got " + got;
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
