package org.cotyla.testcases.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;

/** The parts of a decision sheet. */
final class DecisionTab {

  /** A cell of a rule's row. */
  record Place(Row row, int column) {
    String text() {
      return Copy.text(row, column);
    }

    String type(String text) {
      return Copy.type(row, column, text);
    }
  }

  private final Sheet sheet;
  private final int parts;

  DecisionTab(Sheet sheet) {
    this.sheet = sheet;
    int row = 0;
    while (!Copy.text(sheet, row, 0).equals("id")) {
      row++;
    }
    this.parts = row;
  }

  String policy() {
    for (int row = 0; row < parts; row++) {
      if (Copy.text(sheet, row, 0).equals("hit policy")) {
        return Copy.text(sheet, row, 1);
      }
    }
    throw new IllegalStateException(sheet.getSheetName() + " has no hit policy");
  }

  /** The rows of rules, without a default row. */
  List<Row> rules() {
    List<Row> rules = new ArrayList<>();
    for (int row = parts + 2; row <= sheet.getLastRowNum(); row++) {
      String id = Copy.text(sheet, row, 0);
      if (!id.isEmpty() && !id.equals("default")) {
        rules.add(sheet.getRow(row));
      }
    }
    return rules;
  }

  /** The cells of the rules in the columns of a part, such as {@code when}. */
  List<Place> cells(String part) {
    return cells((at, name) -> at.equals(part));
  }

  /** The cells of the rules in the columns of which both the part and the name fit. */
  List<Place> cells(BiPredicate<String, String> wanted) {
    List<Place> cells = new ArrayList<>();
    for (int column = 1; column < sheet.getRow(parts).getLastCellNum(); column++) {
      if (wanted.test(Copy.text(sheet, parts, column), name(column))) {
        for (Row rule : rules()) {
          cells.add(new Place(rule, column));
        }
      }
    }
    return cells;
  }

  /** The name over a column. */
  String name(int column) {
    return Copy.text(sheet, parts + 1, column);
  }

  int width() {
    return sheet.getRow(parts).getLastCellNum();
  }
}
