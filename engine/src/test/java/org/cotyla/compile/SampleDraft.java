package org.cotyla.compile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.draft.ChecksDraft;
import org.cotyla.draft.DecisionDraft;
import org.cotyla.draft.Headings;
import org.cotyla.draft.Line;
import org.cotyla.draft.ProtocolDraft;
import org.cotyla.draft.RowDraft;
import org.cotyla.draft.TableDraft;
import org.cotyla.draft.Text;
import org.cotyla.expression.Dialect;
import org.cotyla.expression.StandardFunctions;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Issues;
import org.cotyla.protocol.Protocol;

/**
 * A small sound protocol whose cells can be changed one by one. The sheets are laid out as in a
 * workbook: headings in row 1, the head of a decision sheet in rows 1 to 5 and its rows from row 8.
 */
public final class SampleDraft {

  private final Map<String, String> about = new LinkedHashMap<>();
  private final Map<String, List<String[]>> sheets = new LinkedHashMap<>();
  private final List<Sheet> decisions = new ArrayList<>();

  private final List<String[]> safeguards = new ArrayList<>();
  private final List<String[]> accepted = new ArrayList<>();
  private List<String> safeguardsWhen = List.of("width", "class");

  private record Sheet(String[] head, List<String> when, List<String> then, List<String[]> rows) {}

  public SampleDraft() {
    List.of(
            "identifier=sample",
            "title=Sample protocol",
            "version=1.0.0",
            "status=draft",
            "effective from=2026-01-01",
            "review due=-",
            "owner=lead",
            "approved by=-",
            "caution=Not for use.",
            "stages=planning, theatre")
        .forEach(entry -> about.put(entry.split("=")[0], entry.split("=")[1]));
    line(
        "Fields",
        "width",
        "given",
        "number",
        "mm",
        "[0..120]",
        "[10..80]",
        "planning",
        "-",
        "M",
        "S");
    line("Fields", "grade", "given", "choice", "-", "low, high", "-", "planning", "-", "M", "S");
    line("Fields", "firm", "given", "yes/no", "-", "-", "-", "theatre", "-", "M", "S");
    line("Fields", "class", "derived", "choice", "-", "A, B, C", "-", "-", "-", "M", "S");
    line("Fields", "load", "derived", "number", "-", "-", "-", "-", "-", "M", "S");
    line("Options", "plan", "rest", "M", "time; room", "3", "S");
    line("Options", "plan", "brace", "M", "-", "-", "S");
    line("Calculations", "house line", "30", "mm", "M", "S");
    line("Calculations", "twice", "width * 2", "mm", "M", "S");
    line("Sources", "S", "A citation", "2020", "high");
    decision("Class", "U", "-", "width|grade", "class");
    row(0, "K-1", "> house line", "low", "A");
    row(0, "K-2", "<= house line", "-", "B");
    row(0, "K-3", "> house line", "high", "C");
    decision("Load", "C+", "-", "class", "load");
    row(1, "L-1", "A", "2");
    row(1, "L-2", "A, B", "twice");
    decision("Votes", "C", "plan", "class|firm", "option|effect|points");
    row(2, "V-1", "A", "-", "rest", "favour", "2");
    row(2, "V-2", "not(A)", "yes", "brace", "rule out", "-");
  }

  private void line(String sheet, String... cells) {
    sheets.computeIfAbsent(sheet, key -> new ArrayList<>()).add(cells);
  }

  private void decision(String name, String policy, String ranks, String when, String then) {
    String[] head = {name, policy, "What?", ranks, "-"};
    decisions.add(
        new Sheet(
            head,
            new ArrayList<>(List.of(when.split("\\|"))),
            new ArrayList<>(List.of(then.split("\\|"))),
            new ArrayList<>()));
  }

  /** Adds a decision that gives names and has no rows yet. */
  public SampleDraft table(String name, String policy, String when, String then) {
    decision(name, policy, "-", when, then);
    return this;
  }

  /** Adds a row to the decision of that number, with its because and source. */
  public SampleDraft row(int decision, String... cells) {
    String[] row = java.util.Arrays.copyOf(cells, cells.length + 2);
    row[cells.length] = "Reason.";
    row[cells.length + 1] = "S";
    decisions.get(decision).rows.add(row);
    return this;
  }

  public SampleDraft about(String key, String value) {
    about.put(key, value);
    return this;
  }

  public SampleDraft without(String key) {
    about.remove(key);
    return this;
  }

  /** Changes a cell of a sheet with headings; rows are counted from 0. */
  public SampleDraft set(String sheet, int row, String heading, String text) {
    int column = headings(sheet).indexOf(heading);
    List<String[]> rows = sheets.get(sheet);
    String[] cells = rows.get(row);
    if (column >= cells.length) {
      // A column at the end that may be left out.
      cells = Arrays.copyOf(cells, column + 1);
      Arrays.fill(cells, rows.get(row).length, cells.length, "");
      rows.set(row, cells);
    }
    cells[column] = text;
    return this;
  }

  public SampleDraft add(String sheet, String... cells) {
    line(sheet, cells);
    return this;
  }

  /** Changes the head of a decision: its name, hit policy, question, ranking or way to show. */
  public SampleDraft head(int decision, int key, String text) {
    decisions.get(decision).head[key] = text;
    return this;
  }

  public SampleDraft when(int decision, int column, String name) {
    decisions.get(decision).when.set(column, name);
    return this;
  }

  public SampleDraft then(int decision, int column, String name) {
    decisions.get(decision).then.set(column, name);
    return this;
  }

  public SampleDraft cell(int decision, int row, int column, String text) {
    decisions.get(decision).rows.get(row)[column] = text;
    return this;
  }

  public SampleDraft noRows(int decision) {
    decisions.get(decision).rows.clear();
    return this;
  }

  /** Adds a safeguard: its id, its tests, must, what, because and source. */
  public SampleDraft safeguard(String... cells) {
    safeguards.add(cells);
    return this;
  }

  /** Changes what the safeguards test. */
  public SampleDraft safeguardsWhen(String... names) {
    safeguardsWhen = List.of(names);
    return this;
  }

  /** Adds an accepted warning: code, about, because, by and date. */
  public SampleDraft accepted(String... cells) {
    accepted.add(cells);
    return this;
  }

  private TableDraft safeguards() {
    if (safeguards.isEmpty()) {
      return TableDraft.empty();
    }
    List<TableDraft.Row> rows = new ArrayList<>();
    int tests = safeguardsWhen.size();
    for (String[] cells : safeguards) {
      List<Text> texts = texts("Safeguards", 2 + rows.size(), 0, List.of(cells));
      rows.add(
          new TableDraft.Row(
              texts.get(0),
              Map.of("when", texts.subList(1, 1 + tests)),
              Map.of(
                  "must", texts.get(1 + tests),
                  "what", texts.get(2 + tests),
                  "because", texts.get(3 + tests),
                  "source", texts.get(4 + tests))));
    }
    return new TableDraft(Map.of("when", texts("Safeguards", 1, 1, safeguardsWhen)), rows);
  }

  private List<Line> accepted() {
    List<Line> lines = new ArrayList<>();
    for (String[] cells : accepted) {
      List<Text> texts = texts("Accepted", 1 + lines.size(), 0, List.of(cells));
      Map<String, Text> byHeading = new HashMap<>();
      texts.forEach(text -> byHeading.put(Headings.ACCEPTED.get(byHeading.size()), text));
      lines.add(new Line(texts.get(0).at(), byHeading));
    }
    return lines;
  }

  private static List<String> headings(String sheet) {
    return switch (sheet) {
      case "Fields" -> Headings.FIELDS;
      case "Options" -> Headings.OPTIONS;
      case "Calculations" -> Headings.CALCULATIONS;
      case "Changes" -> Headings.CHANGES;
      case "Reasons" -> Headings.REASONS;
      case "Outcomes" -> Headings.OUTCOMES;
      default -> Headings.SOURCES;
    };
  }

  public ProtocolDraft draft() {
    Map<String, Text> entries = new HashMap<>();
    about.forEach(
        (key, value) ->
            entries.put(key, new Text(value, new CellRef("Protocol", entries.size(), 1))));
    return new ProtocolDraft(
        "sample",
        entries,
        lines("Fields"),
        lines("Options"),
        lines("Calculations"),
        lines("Sources"),
        lines("Changes"),
        decisions.stream().map(SampleDraft::decision).toList(),
        List.of(),
        new ChecksDraft(safeguards(), accepted(), TableDraft.empty()),
        lines("Reasons"),
        lines("Outcomes"));
  }

  private List<Line> lines(String sheet) {
    List<Line> lines = new ArrayList<>();
    for (String[] cells : sheets.getOrDefault(sheet, new ArrayList<>())) {
      Map<String, Text> texts = new HashMap<>();
      for (int i = 0; i < cells.length; i++) {
        texts.put(
            headings(sheet).get(i), new Text(cells[i], new CellRef(sheet, lines.size() + 1, i)));
      }
      lines.add(new Line(new CellRef(sheet, lines.size() + 1, 0), texts));
    }
    return lines;
  }

  private static DecisionDraft decision(Sheet sheet) {
    String tab = sheet.head[0];
    List<Text> head = new ArrayList<>();
    for (String text : sheet.head) {
      head.add(new Text(text, new CellRef(tab, head.size(), 1)));
    }
    List<RowDraft> rows = new ArrayList<>();
    int inputs = sheet.when.size();
    for (String[] cells : sheet.rows) {
      List<Text> texts = texts(tab, 7 + rows.size(), 0, List.of(cells));
      int end = texts.size();
      rows.add(
          new RowDraft(
              texts.get(0),
              texts.subList(1, 1 + inputs),
              texts.subList(1 + inputs, end - 2),
              texts.get(end - 2),
              texts.get(end - 1)));
    }
    return new DecisionDraft(
        head.get(0),
        head.get(1),
        head.get(2),
        head.get(3),
        head.get(4),
        texts(tab, 6, 1, sheet.when),
        texts(tab, 6, 1 + inputs, sheet.then),
        rows);
  }

  private static List<Text> texts(String tab, int row, int column, List<String> cells) {
    List<Text> texts = new ArrayList<>();
    cells.forEach(cell -> texts.add(new Text(cell, new CellRef(tab, row, column + texts.size()))));
    return texts;
  }

  /** Every issue of the draft. */
  public List<Issue> issues() {
    Issues issues = new Issues();
    compile(issues);
    return issues.list();
  }

  public Protocol protocol() {
    Issues issues = new Issues();
    return compile(issues).orElseThrow(() -> new AssertionError(issues.list().toString()));
  }

  private Optional<Protocol> compile(Issues issues) {
    return new ProtocolCompiler(StandardFunctions.all(), Dialect.KIND).compile(draft(), issues);
  }
}
