package org.cotyla.library;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVRecord;
import org.cotyla.compare.PastCase;
import org.cotyla.finding.Case;
import org.cotyla.finding.Given;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;
import org.cotyla.name.NameIndex;
import org.cotyla.name.Names;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;

/**
 * A table of past cases as comma-separated values: a row of headings, which are the names of
 * fields, and a row for each case. Columns are separated by commas, semicolons or tabs, whichever
 * the headings have most of. Rows are read one by one, so that a table may be of any length.
 *
 * <p>A column {@code stage} states the stage, a column {@code case} or {@code case reference} what
 * the case is called. A blank cell states nothing.
 */
public final class CaseTable implements Closeable {

  private static final Set<String> STAGE = Set.of("stage");
  private static final Set<String> REFERENCE =
      Set.of("case", "casereference", "caseid", "reference", "title");
  private static final int LOOK_AHEAD = 1 << 16;

  private final String name;
  private final Reader reader;
  private final Records records;
  private final List<String> headings;
  private final long headingsRow;
  private final Map<Integer, String> fields = new HashMap<>();
  private final List<Issue> remarks = new ArrayList<>();
  private int stageColumn = -1;
  private int referenceColumn = -1;

  private CaseTable(String name, Reader reader, Records records) {
    this.name = name;
    this.reader = reader;
    this.records = records;
    Optional<Records.Read> first = records.next();
    if (first.isPresent() && first.get() instanceof Records.Fault fault) {
      throw new RejectedException(unreadable(fault));
    }
    this.headings =
        first.isPresent() && first.get() instanceof Records.Cells cells
            ? cells.cells().toList()
            : List.of();
    this.headingsRow = first.map(Records.Read::row).orElse(1L);
  }

  /**
   * The table in the stream, which is closed with it.
   *
   * @param protocols those whose fields the headings may name
   * @throws RejectedException when the headings make no table of cases
   * @throws IOException when the stream fails
   */
  public static CaseTable of(String name, InputStream stream, List<Protocol> protocols)
      throws IOException {
    BufferedReader text =
        new BufferedReader(
            new InputStreamReader(stream, StandardCharsets.UTF_8.newDecoder()), LOOK_AHEAD);
    try {
      char separator = separator(text);
      BoundedReader bounded = new BoundedReader(text);
      CaseTable table = new CaseTable(name, bounded, new Records(bounded, separator));
      table.readHeadings(protocols);
      return table;
    } catch (CharacterCodingException unreadable) {
      throw new RejectedException(unreadable(name, unreadable));
    }
  }

  private static char separator(BufferedReader text) throws IOException {
    text.mark(LOOK_AHEAD);
    if (text.read() != '\uFEFF') {
      text.reset();
    }
    text.mark(LOOK_AHEAD);
    int commas = 0;
    int semicolons = 0;
    int tabs = 0;
    for (int i = 0; i < LOOK_AHEAD - 1; i++) {
      int character = text.read();
      if (character < 0 || character == '\n' || character == '\r') {
        break;
      }
      commas += character == ',' ? 1 : 0;
      semicolons += character == ';' ? 1 : 0;
      tabs += character == '\t' ? 1 : 0;
    }
    text.reset();
    if (tabs > commas && tabs > semicolons) {
      return '\t';
    }
    return semicolons > commas ? ';' : ',';
  }

  private void readHeadings(List<Protocol> protocols) {
    List<Field> known = new ArrayList<>();
    protocols.forEach(protocol -> known.addAll(protocol.fields()));
    NameIndex<Field> byName = NameIndex.of(known, Field::name);
    List<String> names = known.stream().filter(Field::isGiven).map(Field::name).distinct().toList();
    Issues issues = new Issues();
    Map<String, String> seen = new HashMap<>();
    for (int i = 0; i < headings.size(); i++) {
      String heading = headings.get(i).strip();
      String key = Names.key(heading);
      Optional<Field> field = byName.find(heading);
      if (heading.isEmpty()) {
        continue;
      }
      if (field.isPresent() && field.get().isGiven()) {
        String twice = seen.putIfAbsent(key, heading);
        if (twice != null) {
          issues.error(
              "C002", place(headingsRow), "two columns are `" + heading + "` and `" + twice + "`");
        }
        fields.put(i, heading);
      } else if (STAGE.contains(key)) {
        stageColumn = i;
      } else if (REFERENCE.contains(key)) {
        referenceColumn = i;
      } else if (field.isPresent()) {
        remark(issues, heading, Optional.of("the protocol decides this itself"));
      } else {
        remark(
            issues,
            heading,
            NearestWord.to(heading, names).map(nearest -> "did you mean `" + nearest + "`?"));
      }
    }
    if (fields.isEmpty()) {
      issues.error(
          "C001",
          new Place.Whole(name),
          "no heading of the table is a field of the protocol",
          "the first row holds the names of fields, as in a case file");
    }
    if (issues.hasErrors()) {
      throw new RejectedException(issues.list());
    }
    remarks.addAll(issues.list());
  }

  private void remark(Issues issues, String heading, Optional<String> help) {
    issues.warning(
        "C050",
        place(headingsRow),
        "the column `" + heading + "` is not read: it is no field of a case",
        help.orElse("headings are names of fields"));
  }

  /** Columns that are not read. */
  public List<Issue> remarks() {
    return List.copyOf(remarks);
  }

  /** The cases in the order of the rows; each row is read when it is asked for. */
  public Iterator<PastCase> cases() {
    return new Rows();
  }

  private final class Rows implements Iterator<PastCase> {

    private Optional<Records.Read> ahead = records.next();

    @Override
    public boolean hasNext() {
      return ahead.isPresent();
    }

    @Override
    public PastCase next() {
      Records.Read found = ahead.orElseThrow();
      ahead = records.next();
      return found instanceof Records.Cells cells
          ? read(cells.row(), cells.cells())
          : faulty((Records.Fault) found);
    }

    private PastCase faulty(Records.Fault fault) {
      return PastCase.faulty("row " + fault.row(), unreadable(fault));
    }

    private PastCase read(long row, CSVRecord found) {
      String reference = cell(found, referenceColumn);
      String called = reference.isEmpty() ? "row " + row : reference;
      if (found.size() > headings.size()) {
        Issues issues = new Issues();
        issues.error(
            "C051",
            place(row),
            "the row has "
                + found.size()
                + " cells, but there are "
                + headings.size()
                + " headings",
            "put a cell that holds a separator into quotation marks");
        return PastCase.faulty(called, issues.list());
      }
      List<Case.Finding> findings = new ArrayList<>();
      for (int i = 0; i < found.size(); i++) {
        String field = fields.get(i);
        String text = cell(found, i);
        if (field != null && !text.isEmpty()) {
          Place place = new Place.InFile("row " + row, new Place.InCase(field));
          findings.add(new Case.Finding(field, new Given.Written(text, Optional.empty()), place));
        }
      }
      String stage = cell(found, stageColumn);
      return PastCase.of(
          called,
          new Case(
              called,
              stage.isEmpty() ? Optional.empty() : Optional.of(stage),
              findings,
              new Place.InFile("row " + row, new Place.InCase("stage"))));
    }
  }

  private static String cell(CSVRecord record, int column) {
    return column < 0 || column >= record.size() ? "" : record.get(column).strip();
  }

  private Place place(long row) {
    return new Place.InFile(name, new Place.Whole("row " + row));
  }

  private List<Issue> unreadable(Records.Fault fault) {
    if (!(fault.why() instanceof CSVException)) {
      return unreadable(name, fault.why());
    }
    Issues issues = new Issues();
    issues.error(
        "C020",
        place(fault.row()),
        "a quotation mark ends before its cell does, or is never closed",
        "end it right before a separator, and double it inside a cell; only the rows before are"
            + " used");
    return issues.list();
  }

  static List<Issue> unreadable(String name, IOException why) {
    Issues issues = new Issues();
    boolean encoding = why instanceof CharacterCodingException;
    String message = why.getMessage();
    issues.error(
        "C020",
        new Place.Whole(name),
        encoding
            ? "the file is not UTF-8 text"
            : "it cannot be read: " + (message == null ? "the reason is not known" : message),
        encoding ? "save it as plain text with the encoding UTF-8" : "what stands before is used");
    return issues.list();
  }

  @Override
  public void close() throws IOException {
    reader.close();
  }
}
