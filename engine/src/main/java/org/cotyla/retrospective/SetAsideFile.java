package org.cotyla.retrospective;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

/** The file of rows set aside, with a line for each reason. It is made with its first line. */
final class SetAsideFile implements AutoCloseable {

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();

  private final Path file;
  private @Nullable FileChannel channel;
  private long length;

  private SetAsideFile(Path file) {
    this.file = file;
  }

  static SetAsideFile fresh(Path file) {
    return new SetAsideFile(file);
  }

  /** Goes on after so many bytes; what stands after them was written after the last state. */
  static SetAsideFile resumed(Path file, long length) throws IOException {
    SetAsideFile resumed = new SetAsideFile(file);
    if (length > 0
        && (!java.nio.file.Files.exists(file) || java.nio.file.Files.size(file) < length)) {
      throw new IOException("the file of rows set aside is shorter than it was");
    }
    if (java.nio.file.Files.exists(file)) {
      FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
      channel.truncate(length);
      channel.position(length);
      resumed.channel = channel;
      resumed.length = length;
    }
    return resumed;
  }

  void write(List<SetAside> rows) throws IOException {
    if (rows.isEmpty()) {
      return;
    }
    StringWriter text = new StringWriter();
    try (CSVPrinter csv = new CSVPrinter(text, FORMAT)) {
      if (length == 0) {
        csv.printRecord("row", "column", "reason");
      }
      for (SetAside row : rows) {
        csv.printRecord(row.row(), plain(row.column()), plain(row.reason()));
      }
    }
    FileChannel open = channel;
    if (open == null) {
      open = FileChannel.open(file, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW);
      channel = open;
    }
    ByteBuffer bytes = ByteBuffer.wrap(text.toString().getBytes(StandardCharsets.UTF_8));
    length += bytes.remaining();
    while (bytes.hasRemaining()) {
      open.write(bytes);
    }
  }

  /** One line; and a spreadsheet program must not take it for a formula. */
  private static String plain(String text) {
    String line = text.replaceAll("\\p{Cntrl}", " ");
    return line.matches("[=+\\-@].*") ? "'" + line : line;
  }

  /** Makes sure that what was written is on the disk, and says how long the file is. */
  long force() throws IOException {
    if (channel != null) {
      channel.force(true);
    }
    return length;
  }

  @Override
  public void close() throws IOException {
    if (channel != null) {
      channel.close();
    }
  }
}
