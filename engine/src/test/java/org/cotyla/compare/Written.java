package org.cotyla.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.compile.ProtocolCompiler;
import org.cotyla.draft.DecisionDraft;
import org.cotyla.draft.Headings;
import org.cotyla.draft.Line;
import org.cotyla.draft.ProtocolDraft;
import org.cotyla.draft.RowDraft;
import org.cotyla.draft.Text;
import org.cotyla.evaluate.Engine;
import org.cotyla.expression.Dialect;
import org.cotyla.expression.StandardFunctions;
import org.cotyla.finite.Effort;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issues;

/** A protocol of a few lines, written as its sheets' cells, separated by bars. */
public final class Written {

  private static final Effort EFFORT = new Effort(20_000, 150, 12);

  private final List<Line> fields = new ArrayList<>();
  private final List<Line> options = new ArrayList<>();
  private final List<Line> calculations = new ArrayList<>();
  private final List<Line> changes = new ArrayList<>();
  private final List<DecisionDraft> decisions = new ArrayList<>();

  public Written given(String name, String type, String allowed) {
    return field(name, "given", type, allowed, "-");
  }

  public Written derived(String name, String type, String allowed) {
    return field(name, "derived", type, allowed, "-");
  }

  /** A given field that is known from that stage on. */
  public Written givenAt(String stage, String name, String type, String allowed) {
    return field(name, "given", type, allowed, stage);
  }

  private Written field(String name, String kind, String type, String allowed, String stage) {
    String cells = "%s|%s|%s|-|%s|-|%s|-|Meaning.|S".formatted(name, kind, type, allowed, stage);
    fields.add(line("Fields", fields.size(), Headings.FIELDS, cells));
    return this;
  }

  public Written options(String ranking, String... names) {
    for (String name : names) {
      String cells = "%s|%s|Meaning.|-|-|S".formatted(ranking, name);
      options.add(line("Options", options.size(), Headings.OPTIONS, cells));
    }
    return this;
  }

  public Written calculation(String name, String expression) {
    String cells = "%s|%s|-|Meaning.|S".formatted(name, expression);
    calculations.add(line("Calculations", calculations.size(), Headings.CALCULATIONS, cells));
    return this;
  }

  /** A change that took rows of these ids away. */
  public Written retiring(String ids) {
    String cells = "1.0.0|2026-01-01|lead|A row went.|No use.|" + ids;
    changes.add(line("Changes", changes.size(), Headings.CHANGES, cells));
    return this;
  }

  /** A decision that gives names; each row is its id, its tests and its results. */
  public Written decision(String name, String policy, String when, String then, String... rows) {
    return sheet(name, policy, "-", when, then, rows);
  }

  /** A decision that votes; each row is its id, its tests, an option, an effect and points. */
  public Written votes(String name, String ranking, String when, String... rows) {
    return sheet(name, "C", ranking, when, "option|effect|points", rows);
  }

  private Written sheet(
      String name, String policy, String ranks, String when, String then, String... rows) {
    int inputs = when.split("\\|").length;
    List<RowDraft> drafts = new ArrayList<>();
    for (String row : rows) {
      List<Text> cells = cells(name, 6 + drafts.size(), row);
      Text because = text(name, 6 + drafts.size(), "Reason.");
      drafts.add(
          new RowDraft(
              cells.get(0),
              cells.subList(1, 1 + inputs),
              cells.subList(1 + inputs, cells.size()),
              because,
              text(name, 6 + drafts.size(), "S")));
    }
    decisions.add(
        new DecisionDraft(
            text(name, 0, name),
            text(name, 1, policy),
            text(name, 2, "What?"),
            text(name, 3, ranks),
            text(name, 4, ranks.equals("-") ? "headline" : "-"),
            cells(name, 5, when),
            cells(name, 5, then),
            drafts));
    return this;
  }

  public Engine engine() {
    Map<String, Text> about = new HashMap<>();
    List.of(
            "identifier=written",
            "title=Written protocol",
            "version=1.0.0",
            "status=draft",
            "caution=Not for use.",
            "stages=planning, preparation, theatre")
        .forEach(
            entry ->
                about.put(
                    entry.split("=")[0], text("Protocol", about.size(), entry.split("=")[1])));
    Line source = line("Sources", 0, Headings.SOURCES, "S|A citation|2020|common practice");
    Issues issues = new Issues();
    return new ProtocolCompiler(StandardFunctions.all(), Dialect.KIND)
        .compile(
            new ProtocolDraft(
                "written",
                about,
                fields,
                options,
                calculations,
                List.of(source),
                changes,
                decisions),
            issues)
        .map(Engine::of)
        .orElseThrow(() -> new AssertionError(issues.list().toString()));
  }

  /** What comparing this one, the old, with a new one says. */
  ProtocolComparison against(Written young) {
    return ProtocolComparison.of(engine(), young.engine(), EFFORT);
  }

  static DecisionComparison decision(ProtocolComparison comparison, String name) {
    return comparison.decisions().stream()
        .filter(decision -> decision.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  static Verdict verdict(ProtocolComparison comparison, String name) {
    return decision(comparison, name).verdict();
  }

  private static Text text(String sheet, int row, String text) {
    return new Text(text, new CellRef(sheet, row, 1));
  }

  private static List<Text> cells(String sheet, int row, String texts) {
    List<Text> cells = new ArrayList<>();
    for (String text : texts.split("\\|", -1)) {
      cells.add(new Text(text, new CellRef(sheet, row, cells.size())));
    }
    return cells;
  }

  private static Line line(String sheet, int row, List<String> headings, String cells) {
    Map<String, Text> texts = new HashMap<>();
    List<Text> all = cells(sheet, row + 1, cells);
    for (int i = 0; i < all.size(); i++) {
      texts.put(headings.get(i), all.get(i));
    }
    return new Line(new CellRef(sheet, row + 1, 0), texts);
  }
}
