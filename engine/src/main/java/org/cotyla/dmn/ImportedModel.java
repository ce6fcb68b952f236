package org.cotyla.dmn;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cotyla.dmn.ImportedTypes.Kind;
import org.cotyla.draft.Line;
import org.cotyla.draft.ProtocolDraft;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.value.ValueType;

/** From the elements of a DMN file to a protocol's draft. Used once. */
final class ImportedModel {

  private static final Kind ANY_TEXT = new Kind(ValueType.TEXT, List.of(), "");
  private static final Set<String> KNOWN =
      Set.of(
          "description",
          "extensionElements",
          "itemDefinition",
          "inputData",
          "decision",
          "knowledgeSource",
          "DMNDI");

  private final String file;
  private final XmlElement root;
  private final Issues issues;
  private final ImportedTypes types;
  private final ImportedNames names = new ImportedNames();
  private final Map<String, Map<String, String>> ownFields = new LinkedHashMap<>();
  private final Map<String, Map<String, String>> fields = new LinkedHashMap<>();
  private final List<Map<String, String>> calculations = new ArrayList<>();
  private final Map<XmlElement, String> calculationNames = new HashMap<>();

  ImportedModel(String file, XmlElement root, Issues issues) {
    this.file = file;
    this.root = root;
    this.issues = issues;
    this.types = new ImportedTypes(root.children("itemDefinition").toList());
  }

  ProtocolDraft draft() {
    root.children("itemDefinition")
        .flatMap(item -> WorkbookLines.of(item, "field").stream())
        .forEach(entries -> ownFields.put(entries.getOrDefault("name", ""), entries));
    ownFields.values().forEach(own -> fields.put(own.getOrDefault("name", ""), own));
    root.children("inputData").forEach(this::input);
    List<XmlElement> decisions = root.children("decision").toList();
    decisions.forEach(this::defineFormula);
    ImportedTables tables = new ImportedTables(names, types, this::derived, this::remark);
    decisions.forEach(tables::define);
    decisions.forEach(this::defineFirst);
    ImportedCells cells = names.cells();
    decisions.forEach(decision -> formula(decision, cells));
    tables.read(cells);
    calculations.addAll(tables.calculations());
    decisions.forEach(this::remarkUnread);
    root.children().stream()
        .filter(element -> !KNOWN.contains(element.name()))
        .forEach(element -> remark(element, "is not a decision table, and is not brought in"));
    return new ProtocolDraft(
        file,
        WorkbookLines.texts(about(), new CellRef("Protocol", 0, 1)),
        lines("Fields", fields.values()),
        lines("Options", options(decisions)),
        lines("Calculations", calculations),
        lines("Sources", sources()),
        lines("Changes", WorkbookLines.of(root, "change")),
        tables.drafts());
  }

  private void remark(XmlElement element, String message) {
    String name = element.shown().isEmpty() ? element.attribute("id") : element.shown();
    issues.warning(
        "D010",
        new Place.Whole(file),
        element.name() + " `" + name + "` " + message,
        "write it into the workbook by hand if it is needed");
  }

  private static List<Line> lines(String sheet, Iterable<Map<String, String>> entries) {
    List<Line> lines = new ArrayList<>();
    entries.forEach(line -> lines.add(WorkbookLines.line(sheet, line)));
    return lines;
  }

  private Map<String, String> about() {
    Map<String, String> about = new LinkedHashMap<>();
    about.put("title", root.attribute("name"));
    about.put("status", "draft");
    WorkbookLines.of(root, "protocol").forEach(about::putAll);
    return about;
  }

  private List<Map<String, String>> sources() {
    List<Map<String, String>> sources = new ArrayList<>();
    for (XmlElement source : root.children("knowledgeSource").toList()) {
      Map<String, String> entries = new LinkedHashMap<>();
      entries.put("key", source.attribute("name"));
      entries.put("citation", source.child("description").map(XmlElement::text).orElse(""));
      WorkbookLines.of(source, "source").forEach(entries::putAll);
      sources.add(entries);
    }
    return sources;
  }

  private static List<Map<String, String>> options(List<XmlElement> decisions) {
    return decisions.stream()
        .flatMap(decision -> WorkbookLines.of(decision, "option").stream())
        .toList();
  }

  private Kind kind(XmlElement element) {
    String typeRef =
        element.child("variable").map(variable -> variable.attribute("typeRef")).orElse("");
    Optional<Kind> kind = types.kind(typeRef);
    if (kind.isEmpty()) {
      remark(
          element,
          typeRef.isEmpty()
              ? "states no type; it is brought in as a text"
              : "has the type `"
                  + typeRef
                  + "`, which a workbook has not; it is brought in as a text");
    }
    return kind.orElse(ANY_TEXT);
  }

  private void input(XmlElement input) {
    List<Map<String, String>> host = WorkbookLines.of(input, "host");
    if (!host.isEmpty()) {
      String formula = host.get(0).getOrDefault("expression", "");
      names.stands(input.attribute("name"), formula, kind(input).type());
      return;
    }
    if (input.attribute("name").isEmpty()) {
      remark(input, "has no name, and is not brought in");
      return;
    }
    Kind kind = kind(input);
    String shown = ownFields.containsKey(input.shown()) ? input.shown() : input.attribute("name");
    String meaning = input.child("description").map(XmlElement::text).orElse("");
    field(names.define(input.attribute("name"), shown, kind), "given", kind, meaning);
  }

  /** A result that a decision gives; returns its name in the workbook. */
  private String derived(String fileName, String label, Kind kind) {
    String shown = ownFields.containsKey(label) ? label : fileName;
    String name = names.define(fileName, shown, kind);
    field(name, "derived", kind, "");
    return name;
  }

  /** What the model itself says of a field goes before what it says of the workbook. */
  private void field(String name, String nature, Kind kind, String meaning) {
    Map<String, String> entries = new LinkedHashMap<>();
    entries.put("name", name);
    entries.put("meaning", meaning);
    entries.putAll(ownFields.getOrDefault(name, Map.of()));
    entries.put("kind", nature);
    entries.put("type", kind.word());
    entries.put("allowed", kind.allowed());
    fields.put(name, entries);
  }

  private static boolean isFormula(XmlElement decision) {
    return decision.child("literalExpression").isPresent()
        && !WorkbookLines.has(decision, "part")
        && !WorkbookLines.has(decision, "first");
  }

  private void defineFormula(XmlElement decision) {
    if (isFormula(decision)) {
      String own =
          WorkbookLines.of(decision, "calculation").stream()
              .map(entries -> entries.getOrDefault("name", ""))
              .findFirst()
              .orElse(decision.attribute("name"));
      String typeRef =
          decision.child("variable").map(variable -> variable.attribute("typeRef")).orElse("");
      Kind kind = types.kind(typeRef).orElse(new Kind(ValueType.NUMBER, List.of(), ""));
      calculationNames.put(decision, names.define(decision.attribute("name"), own, kind));
    }
  }

  private void defineFirst(XmlElement decision) {
    for (Map<String, String> entries : WorkbookLines.of(decision, "first")) {
      String name = "first " + entries.getOrDefault("ranking", "");
      names.define(decision.attribute("name"), name, types.kind(typeOf(decision)).orElse(ANY_TEXT));
    }
  }

  private static String typeOf(XmlElement decision) {
    return decision.child("variable").map(variable -> variable.attribute("typeRef")).orElse("");
  }

  private void formula(XmlElement decision, ImportedCells cells) {
    String name = calculationNames.get(decision);
    if (name == null) {
      return;
    }
    String text =
        decision
            .child("literalExpression")
            .flatMap(e -> e.child("text"))
            .map(XmlElement::text)
            .orElse("");
    Map<String, String> entries = new LinkedHashMap<>();
    entries.put("meaning", decision.child("description").map(XmlElement::text).orElse(""));
    WorkbookLines.of(decision, "calculation").forEach(entries::putAll);
    entries.put("name", name);
    try {
      entries.put("expression", cells.formula(text));
      calculations.add(entries);
    } catch (NotHeldException unreadable) {
      remark(decision, "is a formula that a workbook cannot hold: " + unreadable.line());
    }
  }

  private void remarkUnread(XmlElement decision) {
    boolean isRead =
        decision.child("decisionTable").isPresent()
            || isFormula(decision)
            || WorkbookLines.has(decision, "part")
            || WorkbookLines.has(decision, "first")
            || WorkbookLines.has(decision, "option");
    if (!isRead) {
      List<String> logic =
          List.of(
              "context",
              "invocation",
              "functionDefinition",
              "relation",
              "list",
              "conditional",
              "filter",
              "for",
              "some",
              "every");
      String what =
          logic.stream()
              .filter(kind -> decision.child(kind).isPresent())
              .findFirst()
              .map(kind -> "is a boxed " + kind + ", which a workbook has no place for")
              .orElse("has no logic");
      remark(decision, what);
    }
  }
}
