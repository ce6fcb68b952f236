package org.cotyla.retrospective;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;
import org.jspecify.annotations.Nullable;

/** The file of rows set aside, with a line for each reason. It is made with its first line. */
final class SetAsideFile implements AutoCloseable {

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();

  private static final List<String> HEADINGS = List.of("row", "column", "reason");

  private final Path file;
  private @Nullable FileChannel channel;
  private long length;

  private SetAsideFile(Path file) {
    this.file = file;
  }

  static SetAsideFile fresh(Path file) {
    return new SetAsideFile(file);
  }

  /**
   * Goes on after so many bytes; what stands after them was written after the last state.
   *
   * @throws RejectedException when the file is not one of rows set aside: it is not ours to cut
   */
  static SetAsideFile resumed(Path file, long length) throws IOException {
    SetAsideFile resumed = new SetAsideFile(file);
    if (length > 0 && (!Files.exists(file) || Files.size(file) < length)) {
      throw new IOException("the file of rows set aside is shorter than it was");
    }
    if (Files.exists(file)) {
      if (!isEmptyOrOfRows(file)) {
        Issues issues = new Issues();
        issues.error(
            "R012",
            new Place.Whole(String.valueOf(file.getFileName())),
            "it is there already, and not a file of rows set aside",
            "name another file for rows set aside");
        throw new RejectedException(issues.list());
      }
      FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
      channel.truncate(length);
      channel.position(length);
      resumed.channel = channel;
      resumed.length = length;
    }
    return resumed;
  }

  private static boolean isEmptyOrOfRows(Path file) throws IOException {
    byte[] first = (String.join(",", HEADINGS) + "\n").getBytes(StandardCharsets.UTF_8);
    try (InputStream in = Files.newInputStream(file)) {
      byte[] found = in.readNBytes(first.length);
      return found.length == 0 || Arrays.equals(found, first);
    }
  }

  void write(List<SetAside> rows) throws IOException {
    if (rows.isEmpty()) {
      return;
    }
    StringWriter text = new StringWriter();
    try (CSVPrinter csv = new CSVPrinter(text, FORMAT)) {
      if (length == 0) {
        csv.printRecord(HEADINGS);
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
    return !line.isEmpty() && "=+-@".indexOf(line.charAt(0)) >= 0 ? "'" + line : line;
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
