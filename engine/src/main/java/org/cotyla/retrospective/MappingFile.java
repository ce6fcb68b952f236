package org.cotyla.retrospective;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.unit.Units;

/**
 * A mapping as a small CSV file: a line for each column that it corrects, with the column's
 * heading, what it means, and its unit. Columns that it does not name are still guessed.
 */
public final class MappingFile {

  /** The most characters that are read of one. */
  public static final int LONGEST = 1 << 20;

  private static final List<String> HEADINGS = List.of("column", "means", "unit", "note");

  private MappingFile() {}

  /** The mapping as a file that can be corrected and read again. */
  public static String write(ColumnMapping mapping) {
    StringBuilder text = new StringBuilder();
    CSVFormat format = CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();
    try (CSVPrinter csv = new CSVPrinter(text, format)) {
      csv.printRecord(HEADINGS);
      for (Column column : mapping.columns()) {
        csv.printRecord(
            column.heading(),
            column.meaning().word(),
            column.unit().orElse(""),
            column.meaning() instanceof Meaning.Ignored ignored
                ? ignored.why()
                : column.found().words());
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString();
  }

  /**
   * The headings' mapping, corrected by the file.
   *
   * @throws RejectedException with every fault of the mapping file
   */
  public static ColumnMapping read(
      String name, String text, List<String> headings, Protocol protocol) {
    Issues issues = new Issues();
    Map<String, Column> corrected = new LinkedHashMap<>();
    String bare = text.startsWith("\ufeff") ? text.substring(1) : text;
    char delimiter = bare.lines().findFirst().orElse("").contains(";") ? ';' : ',';
    CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(delimiter).get();
    try (CSVParser parser = CSVParser.parse(bare, format)) {
      List<CSVRecord> records = parser.getRecords();
      for (CSVRecord line : records.subList(Math.min(1, records.size()), records.size())) {
        Place place = new Place.InFile(name, new Place.Whole("line " + (line.getRecordNumber())));
        read(line, place, headings, protocol, issues)
            .filter(column -> corrected.put(column.heading(), column) != null)
            .ifPresent(
                twice ->
                    issues.error(
                        "R005", place, "the column `" + twice.heading() + "` is named twice"));
      }
    } catch (IOException | UncheckedIOException malformed) {
      issues.error(
          "R006",
          new Place.Whole(name),
          "the mapping file is not CSV",
          "let the command write one first, and correct that");
    }
    if (issues.hasErrors()) {
      throw new RejectedException(issues.list());
    }
    return ColumnMapping.of(headings, protocol, corrected);
  }

  private static Optional<Column> read(
      CSVRecord line, Place place, List<String> headings, Protocol protocol, Issues issues) {
    String heading = cell(line, 0);
    String means = cell(line, 1);
    if (heading.isEmpty() && means.isEmpty()) {
      return Optional.empty();
    }
    if (!headings.contains(heading)) {
      issues.error(
          "R007",
          place,
          "the cases have no column `" + heading + "`",
          NearestWord.help(heading, headings));
      return Optional.empty();
    }
    Optional<Meaning> meaning = meaning(means, protocol);
    if (meaning.isEmpty()) {
      issues.error(
          "R008",
          place,
          "`" + means + "` is nothing that a column can mean",
          NearestWord.help(means, words(protocol)));
      return Optional.empty();
    }
    Optional<String> unit = Optional.of(cell(line, 2)).filter(code -> !code.isEmpty());
    if (unit.isPresent()) {
      boolean fits =
          meaning.get() instanceof Meaning.Finding finding
              && Units.isKnown(unit.get())
              && MappingGuess.fits(finding.field(), unit);
      if (!fits) {
        issues.error(
            "R009",
            place,
            "the unit `" + unit.get() + "` does not fit " + meaning.get().word(),
            "write the unit's code in UCUM, or leave it empty");
      }
    }
    return Optional.of(new Column(0, heading, meaning.get(), unit, Column.Found.BY_FILE));
  }

  private static String cell(CSVRecord line, int index) {
    return index < line.size() ? line.get(index).strip() : "";
  }

  private static Optional<Meaning> meaning(String means, Protocol protocol) {
    if (means.equals(Meaning.Ignored.WORD)) {
      return Optional.of(new Meaning.Ignored("the mapping file says so"));
    }
    int colon = means.indexOf(':');
    String kind = colon < 0 ? "" : means.substring(0, colon).strip();
    String rest = means.substring(colon + 1).strip();
    if (kind.equals("done")) {
      return protocol.ranking(rest).map(Meaning.Done::new);
    }
    Optional<Meaning> other =
        kind.isEmpty()
            ? java.util.Arrays.stream(Meaning.Of.values())
                .filter(one -> one.word().equals(rest))
                .map(Meaning.class::cast)
                .findFirst()
            : Optional.empty();
    if (!kind.isEmpty() && !kind.equals("field")) {
      return Optional.empty();
    }
    return other.or(
        () ->
            org.cotyla.name.NameIndex.of(protocol.givenFields(), Field::name)
                .find(rest)
                .map(Meaning.Finding::new));
  }

  private static List<String> words(Protocol protocol) {
    List<String> words = new ArrayList<>();
    for (Meaning.Of one : Meaning.Of.values()) {
      words.add(one.word());
    }
    words.add(Meaning.Ignored.WORD);
    protocol.rankings().stream()
        .map(Ranking::name)
        .forEach(ranking -> words.add("done: " + ranking));
    protocol.givenFields().forEach(field -> words.add("field: " + field.name()));
    return words;
  }
}
