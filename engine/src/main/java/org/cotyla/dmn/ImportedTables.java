package org.cotyla.dmn;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import org.cotyla.dmn.ImportedTypes.Kind;
import org.cotyla.draft.DecisionDraft;
import org.cotyla.value.ValueType;

/** The decision tables of a file. Used once. */
final class ImportedTables {

  /** Takes a result that a table gives, and tells its name in the workbook. */
  interface Results {
    String add(String fileName, String label, Kind kind);
  }

  private static final Pattern FURTHER_PART = Pattern.compile("result-\\d+-(?!1$)\\d+");

  private final ImportedNames names;
  private final ImportedTypes types;
  private final Results results;
  private final BiConsumer<XmlElement, String> remarks;
  private final List<XmlElement> decisions = new ArrayList<>();
  private final Map<XmlElement, List<String>> then = new LinkedHashMap<>();
  private final Map<XmlElement, List<Kind>> kinds = new LinkedHashMap<>();
  private final List<ImportedTable> tables = new ArrayList<>();
  private final List<Map<String, String>> calculations = new ArrayList<>();
  private final RowIds ids = new RowIds();

  ImportedTables(
      ImportedNames names,
      ImportedTypes types,
      Results results,
      BiConsumer<XmlElement, String> remarks) {
    this.names = names;
    this.types = types;
    this.results = results;
    this.remarks = remarks;
  }

  /** Makes a table's results known before any cell is read. */
  void define(XmlElement decision) {
    Optional<XmlElement> table = decision.child("decisionTable");
    if (table.isEmpty()) {
      return;
    }
    if (decision.attribute("name").isEmpty()) {
      remarks.accept(decision, "has no name, and is not brought in");
      return;
    }
    decisions.add(decision);
    List<XmlElement> outputs = table.get().children("output").toList();
    List<String> columns = new ArrayList<>();
    List<Kind> columnKinds = new ArrayList<>();
    for (XmlElement output : outputs) {
      Kind kind = kind(decision, output, outputs.size() == 1);
      columnKinds.add(kind);
      String name = outputs.size() == 1 ? decision.attribute("name") : output.attribute("name");
      columns.add(
          ranks(decision).isEmpty()
              ? results.add(
                  name.isEmpty() ? decision.attribute("name") + " " + (columns.size() + 1) : name,
                  output.attribute("label"),
                  kind)
              : output.attribute("name"));
    }
    then.put(decision, columns);
    kinds.put(decision, columnKinds);
  }

  private Kind kind(XmlElement decision, XmlElement output, boolean alone) {
    String own = output.attribute("typeRef");
    String whole =
        decision.child("variable").map(variable -> variable.attribute("typeRef")).orElse("");
    Optional<Kind> stated = types.kind(own.isEmpty() && alone ? whole : own);
    boolean counts =
        decision.child("decisionTable").orElseThrow().attribute("aggregation").equals("COUNT");
    Kind plain = new Kind(counts ? ValueType.NUMBER : ValueType.TEXT, List.of(), "");
    if (stated.isEmpty() && !counts) {
      remarks.accept(decision, "does not state the type of a result; it is brought in as a text");
    }
    Kind kind = stated.orElse(plain);
    String values = output.textOf("outputValues");
    return values.isEmpty() ? kind : ImportedTypes.narrowed(kind, values);
  }

  private static String ranks(XmlElement decision) {
    return entry(decision, "ranks");
  }

  private static String entry(XmlElement decision, String heading) {
    return WorkbookLines.of(decision, "decision").stream()
        .map(entries -> entries.getOrDefault(heading, ""))
        .findFirst()
        .orElse("");
  }

  /** Reads every table. */
  void read(ImportedCells cells) {
    for (XmlElement decision : decisions) {
      ImportedTable table = new ImportedTable(head(decision));
      RowIds rowIds = isFurtherPart(decision) ? new RowIds() : ids;
      TableReading reading =
          new TableReading(decision, table, names, cells, remarks, rowIds, calculations);
      boolean read =
          reading.read(
              then.getOrDefault(decision, List.of()),
              kinds.getOrDefault(decision, List.of()),
              !ranks(decision).isEmpty());
      if (read) {
        add(decision, table);
      }
    }
  }

  /** An aggregate over several results is one table for each in a model, and one in a workbook. */
  private void add(XmlElement decision, ImportedTable table) {
    boolean isSplit =
        isFurtherPart(decision)
            && !tables.isEmpty()
            && tables.get(tables.size() - 1).name().equals(table.name())
            && tables.get(tables.size() - 1).hasRowsOf(table);
    if (isSplit) {
      tables.get(tables.size() - 1).widen(table);
    } else {
      tables.add(table);
    }
  }

  /** Whether an export of ours wrote the table for a second or later result of one sheet. */
  private static boolean isFurtherPart(XmlElement decision) {
    return WorkbookLines.has(decision, "decision")
        && FURTHER_PART.matcher(decision.attribute("id")).matches();
  }

  private static Map<String, String> head(XmlElement decision) {
    XmlElement table = decision.child("decisionTable").orElseThrow();
    String own = entry(decision, "decision");
    Map<String, String> head = new LinkedHashMap<>();
    head.put("decision", own.isEmpty() ? decision.shown() : own);
    head.put("hit policy", policy(table));
    String question = decision.child("question").map(XmlElement::text).orElse("");
    head.put(
        "asks",
        question.isEmpty()
            ? decision.child("description").map(XmlElement::text).orElse("")
            : question);
    head.put("ranks", ranks(decision));
    head.put("shown as", entry(decision, "shown as"));
    return head;
  }

  private static String policy(XmlElement table) {
    String policy = table.attribute("hitPolicy").toUpperCase(Locale.ROOT);
    String aggregation =
        switch (table.attribute("aggregation")) {
          case "SUM" -> "+";
          case "MIN" -> "<";
          case "MAX" -> ">";
          case "COUNT" -> "#";
          default -> "";
        };
    return policy.isEmpty() ? "U" : policy.charAt(0) + aggregation;
  }

  List<DecisionDraft> drafts() {
    return tables.stream().map(ImportedTable::draft).toList();
  }

  /** Formulas that stood where a workbook has a name. */
  List<Map<String, String>> calculations() {
    return calculations;
  }
}
