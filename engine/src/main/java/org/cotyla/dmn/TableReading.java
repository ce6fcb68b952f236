package org.cotyla.dmn;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import org.cotyla.dmn.ImportedTypes.Kind;
import org.cotyla.expression.Symbol;
import org.cotyla.value.ValueType;

/** Reads one decision table of a file into a decision sheet. Used once. */
final class TableReading {

  private final XmlElement decision;
  private final XmlElement table;
  private final ImportedTable sheet;
  private final ImportedNames names;
  private final ImportedCells cells;
  private final BiConsumer<XmlElement, String> remarks;
  private final RowIds ids;
  private final List<Map<String, String>> calculations;
  private final List<Symbol> inputs = new ArrayList<>();
  private List<Kind> kinds = List.of();
  private boolean votes;

  TableReading(
      XmlElement decision,
      ImportedTable sheet,
      ImportedNames names,
      ImportedCells cells,
      BiConsumer<XmlElement, String> remarks,
      RowIds ids,
      List<Map<String, String>> calculations) {
    this.decision = decision;
    this.table = decision.child("decisionTable").orElseThrow();
    this.sheet = sheet;
    this.names = names;
    this.cells = cells;
    this.remarks = remarks;
    this.ids = ids;
    this.calculations = calculations;
  }

  /** Whether the table can stand in a workbook; if not, that is remarked on. */
  boolean read(List<String> then, List<Kind> kindsOfResults, boolean isVote) {
    kinds = kindsOfResults;
    votes = isVote;
    sheet.then.addAll(then);
    for (XmlElement input : table.children("input").toList()) {
      if (!input(input.textOf("inputExpression"))) {
        return false;
      }
    }
    ids.beginTable();
    List<XmlElement> rules = table.children("rule").toList();
    for (int i = 0; i < rules.size(); i++) {
      row(rules.get(i), i);
    }
    defaultRow();
    return true;
  }

  private boolean input(String expression) {
    Optional<Symbol> name = names.symbol(expression);
    if (name.isPresent()) {
      inputs.add(name.get());
      sheet.when.add(names.inWorkbook(name.get()));
      return true;
    }
    Optional<ValueType> type = cells.type(expression);
    if (type.isEmpty()) {
      remarks.accept(
          decision,
          "tests `" + expression + "`, which a workbook cannot hold, and is not brought in");
      return false;
    }
    // A workbook tests names, so the formula gets one.
    String calculation = names.unique(sheet.name() + " input " + (inputs.size() + 1));
    inputs.add(new Symbol(calculation, -2 - inputs.size(), type.get(), List.of()));
    sheet.when.add(calculation);
    Map<String, String> entries = new LinkedHashMap<>();
    entries.put("name", calculation);
    entries.put("expression", cell(() -> cells.formula(expression), expression, "an input"));
    calculations.add(entries);
    return true;
  }

  /** Reads a cell. */
  private interface Reading {
    String read() throws NotHeldException;
  }

  /** The cell as a workbook has it, or as it stands in the file, which is then remarked on. */
  private String cell(Reading reading, String text, String where) {
    try {
      return reading.read();
    } catch (NotHeldException unreadable) {
      remarks.accept(
          decision,
          "has in " + where + " a cell that a workbook cannot hold: " + unreadable.line());
      return text;
    }
  }

  private void row(XmlElement rule, int place) {
    Map<String, String> annotations = annotations(rule);
    String id = ids.of(annotations.getOrDefault("id", rule.attribute("id")), place);
    List<String> tests = new ArrayList<>();
    List<XmlElement> entries = rule.children("inputEntry").toList();
    for (int i = 0; i < inputs.size(); i++) {
      String text = i < entries.size() ? text(entries.get(i)) : "";
      Symbol input = inputs.get(i);
      tests.add(cell(() -> cells.test(text, input), text, "row `" + id + "`"));
    }
    List<String> results = new ArrayList<>();
    List<XmlElement> outputs = rule.children("outputEntry").toList();
    for (int i = 0; i < sheet.then.size(); i++) {
      results.add(result(i < outputs.size() ? text(outputs.get(i)) : "", i, "row `" + id + "`"));
    }
    String because =
        annotations.getOrDefault(
            "because",
            rule.child("description")
                .map(XmlElement::text)
                .orElse(String.join("; ", annotations.values())));
    sheet.rows.add(
        new ImportedTable.Row(id, tests, results, because, annotations.getOrDefault("source", "")));
  }

  private static String text(XmlElement entry) {
    return entry.child("text").map(XmlElement::text).orElse("");
  }

  private String result(String text, int column, String where) {
    String result = cell(() -> cells.result(text, kinds.get(column).type()), text, where);
    return votes && result.equals("null") ? "-" : result;
  }

  /** The annotations of a row by the names of their columns. */
  private Map<String, String> annotations(XmlElement rule) {
    List<String> columns =
        table.children("annotation").map(column -> column.attribute("name")).toList();
    List<XmlElement> entries = rule.children("annotationEntry").toList();
    Map<String, String> annotations = new LinkedHashMap<>();
    IntStream.range(0, Math.min(columns.size(), entries.size()))
        .filter(i -> !text(entries.get(i)).isEmpty())
        .forEach(i -> annotations.put(columns.get(i), text(entries.get(i))));
    return annotations;
  }

  private void defaultRow() {
    List<XmlElement> outputs = table.children("output").toList();
    boolean isStated =
        outputs.stream()
            .anyMatch(
                output ->
                    output.child("defaultOutputEntry").isPresent()
                        || WorkbookLines.has(output, "default"));
    if (!isStated) {
      return;
    }
    List<String> results = new ArrayList<>();
    for (int i = 0; i < outputs.size(); i++) {
      results.add(result(outputs.get(i).textOf("defaultOutputEntry"), i, "its default results"));
    }
    Map<String, String> own =
        outputs.stream()
            .flatMap(output -> WorkbookLines.of(output, "default").stream())
            .findFirst()
            .orElse(Map.of());
    sheet.rows.add(
        new ImportedTable.Row(
            "default",
            new ArrayList<>(Collections.nCopies(inputs.size(), "-")),
            results,
            own.getOrDefault("because", ""),
            own.getOrDefault("source", "")));
  }
}
