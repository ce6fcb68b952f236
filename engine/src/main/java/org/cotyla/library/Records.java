package org.cotyla.library;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The rows of a table that say something, one by one. The parser reads on behind a fault as if
 * nothing were, with cells in wrong columns; so a fault is handed out once and ends the table.
 */
final class Records {

  /** What stands in a row, or why it cannot be read; rows are counted from 1, blank ones too. */
  sealed interface Read {
    long row();
  }

  record Cells(long row, CSVRecord cells) implements Read {}

  record Fault(long row, IOException why) implements Read {}

  private final BoundedReader reader;
  private final CSVParser parser;
  private final Iterator<CSVRecord> records;
  private boolean broken;

  Records(BoundedReader reader, char separator) throws IOException {
    this.reader = reader;
    this.parser =
        CSVFormat.RFC4180
            .builder()
            .setDelimiter(separator)
            .setIgnoreEmptyLines(false)
            .setTrim(true)
            .get()
            .parse(reader);
    this.records = parser.iterator();
  }

  /** The next row; nothing at the end and after a fault. */
  Optional<Read> next() {
    try {
      while (!broken && records.hasNext()) {
        CSVRecord record = records.next();
        reader.recordRead();
        if (!isBlank(record)) {
          return Optional.of(new Cells(record.getRecordNumber(), record));
        }
      }
      return Optional.empty();
    } catch (UncheckedIOException unreadable) {
      IOException why = unreadable.getCause();
      return Optional.of(fault(why == null ? new IOException(unreadable) : why));
    } catch (IllegalStateException unreadable) {
      return Optional.of(fault(new IOException(unreadable.getMessage())));
    }
  }

  private Fault fault(IOException why) {
    broken = true;
    return new Fault(parser.getRecordNumber() + 1, why);
  }

  private static boolean isBlank(CSVRecord record) {
    return record.size() == 1 && record.get(0).isBlank();
  }
}
