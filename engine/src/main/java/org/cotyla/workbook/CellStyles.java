package org.cotyla.workbook;

import static org.cotyla.workbook.PackageStructure.attribute;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** The number format of each cell style; all else about styles is for people. */
record CellStyles(List<NumberFormat> byIndex) {

  static final CellStyles NONE = new CellStyles(List.of());

  static CellStyles from(XMLStreamReader xml) throws XMLStreamException {
    Map<Integer, String> custom = new HashMap<>();
    List<NumberFormat> formats = new ArrayList<>();
    String group = "";
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "numFmts", "cellXfs" -> group = xml.getLocalName();
          case "numFmt" -> {
            if (group.equals("numFmts")) {
              custom.put(formatId(xml), attribute(xml, "formatCode", "General"));
            }
          }
          case "xf" -> {
            if (group.equals("cellXfs")) {
              formats.add(NumberFormat.of(formatId(xml), custom.get(formatId(xml))));
            }
          }
          default -> {}
        }
      } else if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals(group)) {
        group = "";
      }
    }
    return new CellStyles(formats);
  }

  private static int formatId(XMLStreamReader xml) {
    return Integer.parseInt(attribute(xml, "numFmtId", "0"));
  }

  NumberFormat format(String style) {
    int index = style.isEmpty() ? 0 : Integer.parseInt(style);
    return index >= 0 && index < byIndex.size() ? byIndex.get(index) : NumberFormat.PLAIN;
  }
}
