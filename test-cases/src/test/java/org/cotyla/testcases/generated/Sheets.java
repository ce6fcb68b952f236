package org.cotyla.testcases.generated;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.cotyla.compile.ProtocolCompiler;
import org.cotyla.draft.DecisionDraft;
import org.cotyla.draft.Headings;
import org.cotyla.draft.Line;
import org.cotyla.draft.ProtocolDraft;
import org.cotyla.draft.RowDraft;
import org.cotyla.draft.Text;
import org.cotyla.expression.Dialect;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.expression.StandardFunctions;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issues;
import org.cotyla.protocol.Protocol;

/** Builds a protocol's text sheet by sheet, as a workbook would hold it, with cells in place. */
public final class Sheets {

  private final Map<String, Text> about = new HashMap<>();
  private final List<Line> fields = new ArrayList<>();
  private final List<Line> options = new ArrayList<>();
  private final List<Line> calculations = new ArrayList<>();
  private final List<DecisionDraft> decisions = new ArrayList<>();

  public Sheets() {
    about("identifier", "generated");
    about("title", "Generated protocol");
    about("version", "1.0.0");
    about("status", "draft");
    about("caution", "Not for use.");
    about("stages", "planning, theatre");
  }

  public Sheets about(String key, String value) {
    about.put(key, new Text(value, new CellRef("Protocol", about.size(), 1)));
    return this;
  }

  /** A field; what is not said is usual: given, no unit, first stage. */
  public Sheets field(String name, String type, String allowed) {
    return field(name, "given", type, allowed, "-");
  }

  public Sheets derived(String name, String type, String allowed) {
    return field(name, "derived", type, allowed, "-");
  }

  public Sheets field(String name, String kind, String type, String allowed, String stage) {
    fields.add(
        line(
            "Fields",
            fields.size(),
            Headings.FIELDS,
            name,
            kind,
            type,
            "-",
            allowed,
            "-",
            stage,
            "-",
            "Meaning.",
            "S"));
    return this;
  }

  public Sheets option(String ranking, String name) {
    options.add(
        line(
            "Options", options.size(), Headings.OPTIONS, ranking, name, "Meaning.", "-", "-", "S"));
    return this;
  }

  public Sheets calculation(String name, String expression) {
    calculations.add(
        line(
            "Calculations",
            calculations.size(),
            Headings.CALCULATIONS,
            name,
            expression,
            "-",
            "Meaning.",
            "S"));
    return this;
  }

  /** A decision; each row is its id, its tests and its results. */
  public Sheets decision(
      String name, String policy, String ranks, String when, String then, String... rows) {
    List<Text> inputs = cells(name, 5, split(when));
    List<Text> outputs = cells(name, 5, split(then));
    List<RowDraft> drafts = new ArrayList<>();
    for (String row : rows) {
      List<Text> cells = cells(name, 6 + drafts.size(), split(row));
      List<Text> tests = cells.subList(1, 1 + inputs.size());
      List<Text> results = cells.subList(1 + inputs.size(), 1 + inputs.size() + outputs.size());
      CellRef end = new CellRef(name, 6 + drafts.size(), cells.size());
      drafts.add(
          new RowDraft(cells.get(0), tests, results, new Text("Reason.", end), new Text("S", end)));
    }
    decisions.add(
        new DecisionDraft(
            text(name, name, 0),
            text(name, policy, 1),
            text(name, "What?", 2),
            text(name, ranks, 3),
            text(name, ranks.equals("-") ? "headline" : "-", 4),
            inputs,
            outputs,
            drafts));
    return this;
  }

  /** Another version: rows are left out, and cells of rows of the same table change places. */
  public Sheets changed(Random random) {
    for (int i = 0; i < decisions.size(); i++) {
      DecisionDraft decision = decisions.get(i);
      List<RowDraft> rows = new ArrayList<>(decision.rows());
      if (rows.size() > 2 && random.nextInt(3) == 0) {
        rows.remove(random.nextInt(rows.size()));
      } else if (rows.size() > 1 && random.nextBoolean()) {
        int one = random.nextInt(rows.size());
        rows.set(one, withTestsOf(rows.get(one), rows.get(random.nextInt(rows.size()))));
      }
      decisions.set(i, withRows(decision, rows));
    }
    return this;
  }

  private static RowDraft withTestsOf(RowDraft row, RowDraft other) {
    boolean isDefault = row.id().text().equals("default") || other.id().text().equals("default");
    return isDefault
        ? row
        : new RowDraft(row.id(), other.tests(), row.results(), row.because(), row.sources());
  }

  private static DecisionDraft withRows(DecisionDraft decision, List<RowDraft> rows) {
    return new DecisionDraft(
        decision.name(),
        decision.hitPolicy(),
        decision.asks(),
        decision.ranks(),
        decision.shownAs(),
        decision.when(),
        decision.then(),
        rows);
  }

  public ProtocolDraft draft() {
    Line source =
        line("Sources", 0, Headings.SOURCES, "S", "A citation", "2020", "common practice");
    return new ProtocolDraft(
        "generated", about, fields, options, calculations, List.of(source), List.of(), decisions);
  }

  public Protocol protocol() {
    return protocol(StandardFunctions.all());
  }

  public Protocol protocol(List<FormulaFunction> functions) {
    Issues issues = new Issues();
    return new ProtocolCompiler(functions, Dialect.KIND)
        .compile(draft(), issues)
        .orElseThrow(() -> new AssertionError("the draft is faulty: " + issues.list()));
  }

  private static Text text(String sheet, String text, int row) {
    return new Text(text, new CellRef(sheet, row, 1));
  }

  private static List<String> split(String cells) {
    return cells.isBlank() ? List.of() : List.of(cells.split("\\|", -1));
  }

  private static List<Text> cells(String sheet, int row, List<String> texts) {
    List<Text> cells = new ArrayList<>();
    texts.forEach(text -> cells.add(new Text(text, new CellRef(sheet, row, cells.size()))));
    return cells;
  }

  private static Line line(String sheet, int row, List<String> headings, String... cells) {
    Map<String, Text> texts = new HashMap<>();
    for (int i = 0; i < cells.length; i++) {
      texts.put(headings.get(i), new Text(cells[i], new CellRef(sheet, row + 1, i)));
    }
    return new Line(new CellRef(sheet, row + 1, 0), texts);
  }
}
