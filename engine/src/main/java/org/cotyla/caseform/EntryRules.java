package org.cotyla.caseform;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFDataValidationHelper;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.cotyla.protocol.Field;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;

/**
 * What the spreadsheet program offers and asks while a form is filled in. It asks only and never
 * forbids: a range, an alternative or another unit is no slip, and the reader judges every value.
 */
final class EntryRules {

  private static final List<String> YES_NO = List.of("yes", "no");
  private static final String OR = " If it is not known which, write several with or between.";
  private static final int LONGEST_BOX = 255;

  private final XSSFSheet form;
  private final XSSFDataValidationHelper helper;
  private final XSSFSheet lists;
  private final Map<List<String>, String> columns = new HashMap<>();

  /** Lists stand on a hidden sheet of their own: in the rule itself only short ones have room. */
  EntryRules(XSSFWorkbook workbook, XSSFSheet form) {
    this.form = form;
    this.helper = new XSSFDataValidationHelper(form);
    this.lists = workbook.createSheet("Choices");
    workbook.setSheetVisibility(workbook.getSheetIndex(lists), SheetVisibility.HIDDEN);
  }

  void add(Field field, int row, int column) {
    ValueType type = field.symbol().type();
    if (field.symbol().isChoice()) {
      addList(field.symbol().choices(), row, column, OR);
    } else if (type == ValueType.YES_NO) {
      addList(YES_NO, row, column, OR);
    } else if (type == ValueType.NUMBER) {
      addRange(field, row, column);
    }
  }

  void addStages(List<String> stages, int row, int column) {
    addList(stages, row, column, "");
  }

  private void addList(List<String> choices, int row, int column, String advice) {
    add(
        helper.createFormulaListConstraint(columns.computeIfAbsent(choices, this::column)),
        row,
        column,
        "One of: " + String.join(", ", choices) + "." + advice);
  }

  private String column(List<String> choices) {
    int column = columns.size();
    for (int i = 0; i < choices.size(); i++) {
      XSSFRow row = lists.getRow(i) == null ? lists.createRow(i) : lists.getRow(i);
      row.createCell(column).setCellValue(choices.get(i));
    }
    CellRangeAddress range = new CellRangeAddress(0, choices.size() - 1, column, column);
    return range.formatAsString(lists.getSheetName(), true);
  }

  /** From the least to the largest allowed; what is left out in between is the reader's to say. */
  private void addRange(Field field, int row, int column) {
    Interval hull = field.allowed().hull();
    Value low = hull.low();
    Value high = hull.high();
    if (low == null && high == null) {
      return;
    }
    int operator =
        low == null
            ? OperatorType.LESS_OR_EQUAL
            : high == null ? OperatorType.GREATER_OR_EQUAL : OperatorType.BETWEEN;
    String first = low == null ? high == null ? "" : high.plain() : low.plain();
    String second = low == null || high == null ? "" : high.plain();
    String unit = field.unit().isEmpty() ? "" : " " + field.unit();
    add(
        helper.createNumericConstraint(
            DataValidationConstraint.ValidationType.DECIMAL, operator, first, second),
        row,
        column,
        "A number, "
            + AllowedWords.of(field)
            + unit
            + ". A range as 70..80; another unit is written into the column unit.");
  }

  private void add(DataValidationConstraint constraint, int row, int column, String box) {
    DataValidation rule =
        helper.createValidation(constraint, new CellRangeAddressList(row, row, column, column));
    rule.setErrorStyle(DataValidation.ErrorStyle.WARNING);
    rule.setEmptyCellAllowed(true);
    rule.setSuppressDropDownArrow(true);
    rule.createErrorBox(
        "Please check",
        box.length() <= LONGEST_BOX ? box : box.substring(0, LONGEST_BOX - 3) + "...");
    rule.setShowErrorBox(true);
    form.addValidationData(rule);
  }
}
