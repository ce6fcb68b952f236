package org.cotyla.workbook;

import static org.cotyla.workbook.PackageStructure.attribute;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/**
 * What the workbook part says: its sheets in the order of the tabs, and how dates are counted.
 *
 * @param linkingNames names in the workbook that stand for cells of another workbook, in lower case
 */
record WorkbookPart(List<SheetEntry> sheets, boolean from1904, Set<String> linkingNames) {

  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

  /** A tab, and the relationship that leads to its sheet. */
  record SheetEntry(String name, String relation, boolean hidden) {}

  static WorkbookPart from(XMLStreamReader xml) throws XMLStreamException {
    List<SheetEntry> sheets = new ArrayList<>();
    Set<String> linking = new HashSet<>();
    boolean from1904 = false;
    while (xml.hasNext()) {
      if (xml.next() != XMLStreamConstants.START_ELEMENT) {
        continue;
      }
      switch (xml.getLocalName()) {
        case "workbookPr" -> from1904 = isTrue(attribute(xml, "date1904", "0"));
        case "sheet" -> sheets.add(sheet(xml));
        case "definedName" -> {
          String name = attribute(xml, "name", "").toLowerCase(Locale.ROOT);
          if (Formula.linksOut(xml.getElementText(), Set.of())) {
            linking.add(name);
          }
        }
        default -> {}
      }
    }
    return new WorkbookPart(List.copyOf(sheets), from1904, Set.copyOf(linking));
  }

  private static SheetEntry sheet(XMLStreamReader xml) {
    @Nullable String relation = xml.getAttributeValue(RELATIONS, "id");
    return new SheetEntry(
        TidyText.of(attribute(xml, "name", "")),
        relation == null ? "" : relation,
        attribute(xml, "state", "visible").toLowerCase(Locale.ROOT).contains("hidden"));
  }

  static boolean isTrue(String value) {
    return value.equals("1") || value.equals("true") || value.equals("on");
  }
}
