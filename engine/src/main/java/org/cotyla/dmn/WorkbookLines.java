package org.cotyla.dmn;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.cotyla.draft.Line;
import org.cotyla.draft.Text;
import org.cotyla.issue.CellRef;

/** Reads what an export of ours wrote beside the standard's own elements. */
final class WorkbookLines {

  private WorkbookLines() {}

  /** The entries of each line of the kind right under the element, by the workbook's headings. */
  static List<Map<String, String>> of(XmlElement element, String kind) {
    return element
        .children("extensionElements")
        .flatMap(extension -> extension.children("line"))
        .filter(line -> line.namespace().equals(Namespaces.WORKBOOK))
        .filter(line -> line.attribute("kind").equals(kind))
        .map(WorkbookLines::entries)
        .toList();
  }

  private static Map<String, String> entries(XmlElement line) {
    Map<String, String> entries = new LinkedHashMap<>();
    line.children("cell").forEach(cell -> entries.put(cell.attribute("heading"), cell.text()));
    return entries;
  }

  /** Whether the element carries a line of the kind. */
  static boolean has(XmlElement element, String kind) {
    return !of(element, kind).isEmpty();
  }

  static Line line(String sheet, Map<String, String> entries) {
    CellRef at = new CellRef(sheet, 0, 0);
    return new Line(at, texts(entries, at));
  }

  static Map<String, Text> texts(Map<String, String> entries, CellRef at) {
    return entries.entrySet().stream()
        .collect(Collectors.toMap(Map.Entry::getKey, entry -> new Text(entry.getValue(), at)));
  }
}
