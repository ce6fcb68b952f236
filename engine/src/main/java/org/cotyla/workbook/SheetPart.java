package org.cotyla.workbook;

import static org.cotyla.workbook.PackageStructure.attribute;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.cotyla.issue.CellRef;

/** Reads the part of one sheet: its cells, and which of them are merged. Used once. */
final class SheetPart {

  private static final Pattern REFERENCE = Pattern.compile("\\$?([A-Za-z]{1,3})\\$?(\\d{1,7})");

  private final String name;
  private final CellValues values;
  private final CellCount count;
  private final TreeMap<Integer, GridRow> rows = new TreeMap<>();
  private final Set<Integer> hiddenColumns = new HashSet<>();
  private final List<MergedCells> merged = new ArrayList<>();
  private final Map<String, Boolean> sharedFormulaLinksOut = new HashMap<>();
  private boolean rowsHiddenUnlessSaid;

  SheetPart(String name, CellValues values, CellCount count) {
    this.name = name;
    this.values = values;
    this.count = count;
  }

  Sheet from(XMLStreamReader xml, boolean hidden) throws XMLStreamException {
    int next = 0;
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "sheetFormatPr" ->
              rowsHiddenUnlessSaid = WorkbookPart.isTrue(attribute(xml, "zeroHeight", "0"));
          case "col" -> column(xml);
          case "row" -> next = row(xml, next) + 1;
          case "mergeCell" -> merged(attribute(xml, "ref", ""));
          default -> {}
        }
      } else if (event == XMLStreamConstants.END_ELEMENT
          && xml.getLocalName().equals("mergeCells")) {
        break;
      }
    }
    hiddenColumns.retainAll(columnsWithContent());
    return new Sheet(name, hidden, new ArrayList<>(rows.values()), hiddenColumns, merged);
  }

  /** Two corners with a colon between, or a single cell. */
  private void merged(String area) {
    count.addMerged();
    String[] corners = area.split(":", -1);
    require(corners.length <= 2);
    merged.add(new MergedCells(place(corners[0]), place(corners[corners.length - 1])));
  }

  private Set<Integer> columnsWithContent() {
    Set<Integer> used = new HashSet<>();
    rows.values().forEach(row -> used.addAll(row.cells().keySet()));
    return used;
  }

  private void column(XMLStreamReader xml) {
    if (WorkbookPart.isTrue(attribute(xml, "hidden", "0"))) {
      int first = Integer.parseInt(attribute(xml, "min", "1")) - 1;
      int last = Math.min(Integer.parseInt(attribute(xml, "max", "1")), Limits.COLUMNS);
      IntStream.range(first, last).forEach(hiddenColumns::add);
    }
  }

  private int row(XMLStreamReader xml, int expected) throws XMLStreamException {
    int index = Integer.parseInt(attribute(xml, "r", String.valueOf(expected + 1))) - 1;
    boolean hidden =
        WorkbookPart.isTrue(attribute(xml, "hidden", rowsHiddenUnlessSaid ? "1" : "0"));
    TreeMap<Integer, Cell> cells = new TreeMap<>();
    int column = 0;
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("c")) {
        CellRef at = place(attribute(xml, "r", ""), index, column);
        column = at.column() + 1;
        Cell cell = values.cell(at, stored(xml));
        if (!cell.isBlank()) {
          count.add(cell);
          require(cells.put(at.column(), cell) == null);
        }
      } else if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("row")) {
        break;
      }
    }
    if (!cells.isEmpty()) {
      require(index >= 0 && rows.put(index, new GridRow(name, index, hidden, cells)) == null);
    }
    return index;
  }

  private CellRef place(String reference, int row, int expectedColumn) {
    if (reference.isEmpty()) {
      return new CellRef(name, row, expectedColumn);
    }
    CellRef place = place(reference);
    require(place.row() == row);
    return place;
  }

  private CellRef place(String reference) {
    Matcher parts = REFERENCE.matcher(reference);
    require(parts.matches());
    int column = 0;
    for (char letter : parts.group(1).toCharArray()) {
      column = column * 26 + Character.toUpperCase(letter) - 'A' + 1;
    }
    return new CellRef(name, Integer.parseInt(parts.group(2)) - 1, column - 1);
  }

  private CellValues.Stored stored(XMLStreamReader xml) throws XMLStreamException {
    String type = attribute(xml, "t", "n");
    String style = attribute(xml, "s", "");
    String value = "";
    Optional<String> formula = Optional.empty();
    Optional<String> inline = Optional.empty();
    boolean linksOut = false;
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "f" -> {
            String shared = attribute(xml, "si", "");
            String text = xml.getElementText();
            formula = Optional.of(text);
            linksOut = linksOut(text, shared);
          }
          case "v" -> value = xml.getElementText();
          case "is" -> inline = Optional.of(SharedStrings.richText(xml, "is"));
          default -> {}
        }
      } else if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("c")) {
        break;
      }
    }
    return new CellValues.Stored(type, style, value, inline, formula, linksOut);
  }

  /** A formula that is filled down is written out only once; the copies name it by number. */
  private boolean linksOut(String formula, String shared) {
    if (formula.isEmpty()) {
      return sharedFormulaLinksOut.getOrDefault(shared, false);
    }
    boolean out = Formula.linksOut(formula, values.linkingNames());
    if (!shared.isEmpty()) {
      sharedFormulaLinksOut.put(shared, out);
    }
    return out;
  }

  private static void require(boolean sound) {
    if (!sound) {
      throw new IllegalArgumentException("two cells or rows in one place, or one in no place");
    }
  }
}
