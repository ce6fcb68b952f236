package org.cotyla.workbook;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/** Finds the parts of a workbook by the relationships that the file states (ECMA-376 part 2). */
final class PackageStructure {

  private static final String MAIN = "application/vnd.openxmlformats-officedocument.";
  private static final String WORKBOOK = MAIN + "spreadsheetml.sheet.main+xml";

  /** One stated relationship: its kind's last word and the part that it leads to. */
  record Relation(String kind, String part, boolean strict) {}

  private final Parts parts;
  private final Refusal refusal;

  PackageStructure(Parts parts, Refusal refusal) {
    this.parts = parts;
    this.refusal = refusal;
  }

  /** The name of the part that is the workbook; refuses every other kind of package. */
  String workbookPart() {
    FileKind kind = new FileKind(refusal);
    if (!parts.has("[content_types].xml")) {
      boolean openDocument = parts.has("content.xml") && parts.has("meta-inf/manifest.xml");
      throw kind.notWorkbook(openDocument ? "an OpenDocument file" : "another zip archive");
    }
    Map<String, String> types = parts.read("[content_types].xml", PackageStructure::contentTypes);
    refuseOtherForms(types, kind);
    Relation main =
        parts.read("_rels/.rels", xml -> relations(xml, "")).values().stream()
            .filter(relation -> relation.kind().equals("officeDocument"))
            .findFirst()
            .orElseThrow(() -> refusal.damaged("it does not say which part is the workbook"));
    if (main.strict()) {
      throw refusal.because(
          "W014",
          "the file is of the Strict Open XML form",
          "save it as an ordinary .xlsx workbook");
    }
    if (!WORKBOOK.equals(types.get("/" + main.part()))) {
      throw kind.notWorkbook("something else");
    }
    return main.part();
  }

  private void refuseOtherForms(Map<String, String> types, FileKind kind) {
    for (String type : types.values()) {
      if (type.contains(".sheet.binary.")) {
        throw refusal.because(
            "W006",
            "the file is a workbook of the .xlsb kind",
            "open it in a spreadsheet program and save it as .xlsx");
      }
    }
    boolean macros =
        types.values().stream()
                .anyMatch(type -> type.contains("macroenabled") || type.contains("vbaproject"))
            || parts.names().stream().anyMatch(name -> name.endsWith("vbaproject.bin"));
    if (macros) {
      throw refusal.because(
          "W007",
          "the file holds macros",
          "save it as .xlsx, which leaves the macros behind; none is ever run here");
    }
    for (String type : types.values()) {
      if (type.startsWith(MAIN + "spreadsheetml.template.main")) {
        throw refusal.because("W014", "the file is a template", "save it as an .xlsx workbook");
      }
      if (type.startsWith(MAIN + "wordprocessingml.document.main")) {
        throw kind.notWorkbook("a text document (.docx)");
      }
      if (type.startsWith(MAIN + "presentationml.presentation.main")) {
        throw kind.notWorkbook("a set of slides (.pptx)");
      }
    }
  }

  /** What the part leads to, by relationship id. */
  Map<String, Relation> relationsOf(String part) {
    int slash = part.lastIndexOf('/') + 1;
    String folder = part.substring(0, slash);
    String name = folder + "_rels/" + part.substring(slash) + ".rels";
    return parts.read(name, xml -> relations(xml, folder));
  }

  private static Map<String, String> contentTypes(XMLStreamReader xml) throws XMLStreamException {
    Map<String, String> types = new HashMap<>();
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT) {
        String part = attribute(xml, "PartName", attribute(xml, "Extension", ""));
        types.put(
            part.toLowerCase(Locale.ROOT),
            attribute(xml, "ContentType", "").toLowerCase(Locale.ROOT));
      }
    }
    return types;
  }

  private static Map<String, Relation> relations(XMLStreamReader xml, String folder)
      throws XMLStreamException {
    Map<String, Relation> relations = new HashMap<>();
    while (xml.hasNext()) {
      boolean start = xml.next() == XMLStreamConstants.START_ELEMENT;
      if (start && !attribute(xml, "TargetMode", "").equals("External")) {
        String type = attribute(xml, "Type", "");
        relations.put(
            attribute(xml, "Id", ""),
            new Relation(
                type.substring(type.lastIndexOf('/') + 1),
                resolved(folder, attribute(xml, "Target", "")),
                type.startsWith("http://purl.oclc.org/")));
      }
    }
    return relations;
  }

  /** The part's name; a name that leads nowhere is met later as a missing part. */
  private static String resolved(String folder, String target) {
    String path = target.startsWith("/") ? target : folder + target;
    Deque<String> steps = new ArrayDeque<>();
    for (String step : path.split("/", -1)) {
      if (step.equals("..")) {
        steps.pollLast();
      } else if (!step.isEmpty() && !step.equals(".")) {
        steps.addLast(step);
      }
    }
    return String.join("/", steps).toLowerCase(Locale.ROOT);
  }

  static String attribute(XMLStreamReader xml, String name, String otherwise) {
    @Nullable String value = xml.getAttributeValue(null, name);
    return value == null ? otherwise : value;
  }
}
