package org.cotyla.testcases.conformance;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cotyla.draft.DecisionDraft;
import org.cotyla.draft.Line;
import org.cotyla.draft.ProtocolDraft;
import org.cotyla.draft.RowDraft;
import org.cotyla.draft.Text;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.issue.CellRef;
import org.cotyla.testcases.conformance.DmnModel.Input;
import org.cotyla.testcases.conformance.DmnModel.Output;
import org.cotyla.testcases.conformance.DmnModel.Rule;
import org.cotyla.testcases.conformance.DmnModel.Table;
import org.cotyla.value.ValueType;

/** A decision table of the TCK as a draft of a protocol with that one decision. */
final class TableDraft {

  static final String DECISION = "table";

  private static final Map<String, String> LETTERS =
      Map.ofEntries(
          Map.entry("UNIQUE", "U"),
          Map.entry("ANY", "A"),
          Map.entry("PRIORITY", "P"),
          Map.entry("FIRST", "F"),
          Map.entry("RULE ORDER", "R"),
          Map.entry("OUTPUT ORDER", "O"),
          Map.entry("COLLECT", "C"),
          Map.entry("COLLECT SUM", "C+"),
          Map.entry("COLLECT MIN", "C<"),
          Map.entry("COLLECT MAX", "C>"),
          Map.entry("COLLECT COUNT", "C#"));

  private final Table table;
  private final Types types;
  private final Map<String, ValueType> given;
  private final List<String> columns;
  private final Collection<FormulaFunction> functions;
  private int row;

  /**
   * @param given the type of each name that the table may use
   * @param columns the name of each input column
   */
  TableDraft(
      Table table,
      Types types,
      Map<String, ValueType> given,
      List<String> columns,
      Collection<FormulaFunction> functions) {
    this.table = table;
    this.types = types;
    this.given = given;
    this.columns = columns;
    this.functions = functions;
  }

  ProtocolDraft draft() {
    Map<String, Text> about =
        texts(
            Map.of(
                "identifier", "tck",
                "title", "A table of the DMN TCK",
                "version", "1",
                "status", "draft",
                "caution", "a test"));
    List<Line> fields = new ArrayList<>();
    given.forEach((name, type) -> fields.add(field(name, "given", type, allowedInput(name))));
    for (int i = 0; i < table.outputs().size(); i++) {
      ValueType type =
          outputType(table, i, types, given, functions)
              .orElseThrow(() -> new IllegalStateException("an output whose type cannot be told"));
      fields.add(field(outputName(i), "derived", type, table.outputs().get(i).allowed()));
    }
    List<Line> sources =
        List.of(line(Map.of("key", "TCK", "citation", "DMN TCK", "certainty", "common practice")));
    return new ProtocolDraft(
        "tck", about, fields, List.of(), List.of(), sources, List.of(), List.of(decision()));
  }

  /** The name of an output; one without name is the result. */
  String outputName(int output) {
    return table.outputs().get(output).name().orElse("result");
  }

  /** The type of an output: as it says, or as its first cell that is not null gives. */
  static Optional<ValueType> outputType(
      Table table,
      int output,
      Types types,
      Map<String, ValueType> names,
      Collection<FormulaFunction> functions) {
    Output column = table.outputs().get(output);
    return column
        .type()
        .flatMap(types::valueType)
        .or(
            () ->
                table.rules().stream()
                    .map(rule -> rule.results().get(output))
                    .flatMap(cell -> Formulas.type(cell, names, functions).stream())
                    .findFirst());
  }

  private Optional<String> allowedInput(String name) {
    return Stream.iterate(0, i -> i < columns.size(), i -> i + 1)
        .filter(i -> columns.get(i).equals(name))
        .map(i -> table.inputs().get(i))
        .map(Input::allowed)
        .findFirst()
        .orElse(Optional.empty());
  }

  private Line field(String name, String kind, ValueType type, Optional<String> allowed) {
    Optional<String> choices =
        allowed.filter(values -> type == ValueType.TEXT).map(TableDraft::unquoted);
    Map<String, String> cells = new HashMap<>();
    cells.put("name", name);
    cells.put("kind", kind);
    cells.put("type", choices.isPresent() ? "choice" : type.word());
    cells.put("allowed", choices.or(() -> allowed).orElse("-"));
    cells.put("meaning", "a test");
    cells.put("source", "TCK");
    return line(cells);
  }

  private static String unquoted(String values) {
    return String.join(
        ", ", FeelText.parts(values).stream().map(value -> value.replace("\"", "")).toList());
  }

  private DecisionDraft decision() {
    List<Text> then = new ArrayList<>();
    for (int i = 0; i < table.outputs().size(); i++) {
      then.add(text(outputName(i)));
    }
    List<RowDraft> rows = new ArrayList<>();
    for (Rule rule : table.rules()) {
      rows.add(row("row " + (rows.size() + 1), rule.tests(), rule.results()));
    }
    List<String> otherwise =
        table.outputs().stream().flatMap(output -> output.otherwise().stream()).toList();
    if (!otherwise.isEmpty()) {
      rows.add(row("default", table.inputs().stream().map(input -> "-").toList(), otherwise));
    }
    String policy = Optional.ofNullable(LETTERS.get(table.hitPolicy())).orElseThrow();
    return new DecisionDraft(
        text(DECISION),
        text(policy),
        text("what the table gives"),
        text(""),
        text(""),
        columns.stream().map(this::text).toList(),
        then,
        rows);
  }

  private RowDraft row(String id, List<String> tests, List<String> results) {
    row++;
    return new RowDraft(
        text(id),
        tests.stream().map(this::text).toList(),
        results.stream().map(this::text).toList(),
        text("a test"),
        text("TCK"));
  }

  private Line line(Map<String, String> cells) {
    return new Line(place(), texts(cells));
  }

  private Map<String, Text> texts(Map<String, String> cells) {
    Map<String, Text> texts = new LinkedHashMap<>();
    cells.forEach((key, value) -> texts.put(key, text(value)));
    return texts;
  }

  private Text text(String text) {
    return new Text(text, place());
  }

  private CellRef place() {
    return new CellRef("Table", row, 0);
  }
}
