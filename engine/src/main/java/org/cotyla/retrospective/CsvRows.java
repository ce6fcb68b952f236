package org.cotyla.retrospective;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;

/**
 * The rows of a CSV text (RFC 4180, UTF-8; comma, semicolon or tab between cells).
 *
 * <p>The text is cut into rows here and each is parsed by itself, so that a broken row costs one
 * row and never those after it: where a quotation mark is not closed within some lines, or the
 * lines that it would join do not have as many cells as there are headings, the first line alone is
 * the broken row.
 */
final class CsvRows implements CaseRows {

  private static final String NOT_CLOSED = "a quotation mark is not closed";
  private static final int MOST_LINES = 50;
  private static final int MOST_HEADINGS = 2_000;

  private final TextLines lines;
  private final CSVFormat format;
  private final List<String> headings;
  private final long size;
  private final Deque<TextLines.Line> waiting = new ArrayDeque<>();
  private long number = 1;
  private long blank;

  private CsvRows(TextLines lines, CSVFormat format, List<String> headings, long size) {
    this.lines = lines;
    this.format = format;
    this.headings = headings;
    this.size = size;
  }

  static CsvRows open(String name, InputStream in, long size) throws IOException {
    TextLines lines = new TextLines(in);
    String first = lines.next().map(TextLines.Line::text).orElse("");
    String text = first.startsWith("\ufeff") ? first.substring(1) : first;
    CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(delimiter(text)).get();
    List<String> headings = List.of();
    String why = "";
    try {
      headings = parse(text, format).stream().map(String::strip).toList();
    } catch (IOException malformed) {
      why = "the line of headings is not CSV: " + malformed.getMessage();
    }
    if (text.isBlank()) {
      why = "the file has no line of headings";
    } else if (headings.size() > MOST_HEADINGS) {
      why = "there are more than " + MOST_HEADINGS + " columns";
    }
    if (!why.isEmpty()) {
      lines.close();
      Issues issues = new Issues();
      issues.error("R001", new Place.Whole(name), why, "the first line names the columns");
      throw new RejectedException(issues.list());
    }
    return new CsvRows(lines, format, headings, size);
  }

  /** What stands most often in the headings, outside of quotation marks. */
  static char delimiter(String headings) {
    String bare = headings.replaceAll("\"[^\"]*\"", "");
    return Stream.of(',', ';', '\t')
        .max(
            java.util.Comparator.comparingLong(sign -> bare.chars().filter(c -> c == sign).count()))
        .orElse(',');
  }

  static List<String> parse(String text, CSVFormat format) throws IOException {
    try (CSVParser parser = CSVParser.parse(text, format)) {
      List<CSVRecord> records = parser.getRecords();
      if (records.size() != 1) {
        throw new IOException("the row is in " + records.size() + " parts");
      }
      return records.get(0).toList();
    } catch (java.io.UncheckedIOException malformed) {
      throw malformed.getCause();
    }
  }

  @Override
  public List<String> headings() {
    return headings;
  }

  @Override
  public Optional<RawRow> next() throws IOException {
    for (Optional<TextLines.Line> line = line(); line.isPresent(); line = line()) {
      number++;
      if (line.get().text().isBlank()) {
        blank++;
        continue;
      }
      RawRow row = row(line.get());
      if (!row.isBlank()) {
        return Optional.of(row);
      }
      blank++;
    }
    return Optional.empty();
  }

  private Optional<TextLines.Line> line() throws IOException {
    return waiting.isEmpty() ? lines.next() : Optional.of(waiting.removeFirst());
  }

  private RawRow row(TextLines.Line first) throws IOException {
    String text = first.text();
    if (first.tooLong()) {
      return RawRow.broken(number, text, "the row is longer than a million characters");
    }
    return isOpen(text) ? joined(text) : parsed(number, text, format);
  }

  /** A row that stands in the text by itself. */
  static RawRow parsed(long number, String text, CSVFormat format) {
    if (text.indexOf('\ufffd') >= 0) {
      return RawRow.broken(number, text, "the row is not UTF-8 text");
    }
    if (isOpen(text) && text.indexOf('\n') < 0) {
      return RawRow.broken(number, text, NOT_CLOSED);
    }
    try {
      List<String> cells = text.isBlank() ? List.of() : parse(text, format);
      return new RawRow(number, text, cells, Optional.empty());
    } catch (IOException malformed) {
      return RawRow.broken(number, text, "a quotation mark stands where none can");
    }
  }

  /** A row whose cells have line ends in them, or else its first line alone. */
  private RawRow joined(String first) throws IOException {
    List<TextLines.Line> more = new ArrayList<>();
    StringBuilder text = new StringBuilder(first);
    boolean open = true;
    while (open && more.size() < MOST_LINES) {
      Optional<TextLines.Line> line = line();
      if (line.isEmpty()) {
        break;
      }
      more.add(line.get());
      text.append('\n').append(line.get().text());
      open ^= isOpen(line.get().text());
      if (line.get().tooLong() || text.length() > TextLines.LONGEST) {
        break;
      }
    }
    RawRow row = open ? null : parsed(number, text.toString(), format);
    if (row != null && row.cells().size() == headings.size()) {
      return row;
    }
    for (int i = more.size() - 1; i >= 0; i--) {
      waiting.addFirst(more.get(i));
    }
    return RawRow.broken(number, first, NOT_CLOSED);
  }

  /** Quotation marks within a cell are doubled, so that an odd number leaves one open. */
  private static boolean isOpen(String line) {
    return line.chars().filter(c -> c == '"').count() % 2 == 1;
  }

  @Override
  public long position() {
    return lines.bytes();
  }

  @Override
  public long size() {
    return size;
  }

  @Override
  public long blank() {
    return blank;
  }

  @Override
  public void close() throws IOException {
    lines.close();
  }
}
