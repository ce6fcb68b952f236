package org.cotyla.cli.text;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.cotyla.audit.AuditTable;
import org.cotyla.audit.AuditTable.Cell;

/**
 * The tables of an audit as comma-separated values (RFC 4180): one line for each figure, with its
 * table, the words of its row, the heading of its column and its value.
 */
public final class AuditCsv {

  private static final int NAMES = 3;

  private AuditCsv() {}

  public static String write(List<AuditTable> tables) {
    StringWriter text = new StringWriter();
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setHeader("table", "name 1", "name 2", "name 3", "figure", "value")
            .get();
    try (CSVPrinter csv = new CSVPrinter(text, format)) {
      for (AuditTable table : tables) {
        for (List<Cell> row : table.rows()) {
          write(csv, table, row);
        }
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString();
  }

  /** The words that a row begins with are its names; what follows are its figures. */
  private static void write(CSVPrinter csv, AuditTable table, List<Cell> row) throws IOException {
    List<String> names = new ArrayList<>();
    int column = 0;
    while (column < Math.min(NAMES, row.size() - 1)
        && row.get(column) instanceof AuditTable.Words words) {
      names.add(SafeCell.of(words.text()));
      column++;
    }
    while (names.size() < NAMES) {
      names.add("");
    }
    for (; column < row.size(); column++) {
      csv.printRecord(
          table.name(),
          names.get(0),
          names.get(1),
          names.get(2),
          table.headings().get(column),
          value(row.get(column)));
    }
  }

  private static String value(Cell cell) {
    if (cell instanceof AuditTable.Number count) {
      return Long.toString(count.number());
    }
    if (cell instanceof AuditTable.Share part) {
      return Double.toString(part.share());
    }
    return SafeCell.of(((AuditTable.Words) cell).text());
  }
}
