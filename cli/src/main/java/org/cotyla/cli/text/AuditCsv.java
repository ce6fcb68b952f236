package org.cotyla.cli.text;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.cotyla.audit.AuditReport;
import org.cotyla.audit.AuditTable;
import org.cotyla.audit.AuditTable.Cell;
import org.cotyla.audit.AuditTables;

/**
 * An audit as comma-separated values (RFC 4180): one line for each figure, with its table, the
 * words of its row, the heading of its column and its value.
 */
public final class AuditCsv {

  private static final int NAMES = 3;

  private AuditCsv() {}

  public static String write(AuditReport report) {
    StringWriter text = new StringWriter();
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setHeader("table", "name 1", "name 2", "name 3", "figure", "value")
            .get();
    try (CSVPrinter csv = new CSVPrinter(text, format)) {
      for (AuditTable table : AuditTables.of(report)) {
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
      names.add(safe(words.text()));
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
    return safe(((AuditTable.Words) cell).text());
  }

  /** Spreadsheets would run what begins like a formula; an apostrophe keeps it a text. */
  private static String safe(String text) {
    return !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
