package org.cotyla.retrospective;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.cotyla.workbook.FormSheet;

/** The rows of a file of past cases, one after the other. Used by one thread. */
public interface CaseRows extends AutoCloseable {

  /** The headings, in the order of the columns. */
  List<String> headings();

  /** The next row that is not blank; nothing at the end. */
  Optional<RawRow> next() throws IOException;

  /** How much was read so far, in the unit of {@link #size}. */
  long position();

  /** How much there is to read. */
  long size();

  /** How many rows were blank so far. */
  long blank();

  @Override
  void close() throws IOException;

  /**
   * Opens a file: a workbook is told from CSV by its content.
   *
   * @throws org.cotyla.issue.RejectedException when it has no headings that can be read
   */
  static CaseRows open(Path file) throws IOException {
    String name = String.valueOf(file.getFileName());
    try (InputStream start = new BufferedInputStream(Files.newInputStream(file))) {
      if (FormSheet.looksLikeWorkbook(start.readNBytes(8))) {
        try (InputStream whole = Files.newInputStream(file)) {
          return new SheetRows(name, whole.readNBytes(FormSheet.MOST_BYTES + 1));
        }
      }
    }
    return CsvRows.open(name, Files.newInputStream(file), Files.size(file));
  }
}
