package org.cotyla.testcases.faults;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.cotyla.testcases.house.House;

/** A copy of the house workbook in which cells can be typed over, as in a spreadsheet program. */
final class Copy implements AutoCloseable {

  private static final DataFormatter TEXT = new DataFormatter();

  private final XSSFWorkbook workbook;

  Copy() {
    try {
      workbook = new XSSFWorkbook(new ByteArrayInputStream(House.workbook()));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** Every decision sheet. */
  List<DecisionTab> decisions() {
    List<DecisionTab> tabs = new ArrayList<>();
    for (Sheet sheet : workbook) {
      if (text(sheet, 0, 0).equals("decision")) {
        tabs.add(new DecisionTab(sheet));
      }
    }
    return tabs;
  }

  /** Every line of a sheet with headings, without the headings. */
  List<Row> lines(String sheet) {
    List<Row> lines = new ArrayList<>();
    for (Row row : workbook.getSheet(sheet)) {
      if (row.getRowNum() > 0 && !text(row, 0).isEmpty()) {
        lines.add(row);
      }
    }
    return lines;
  }

  int column(String sheet, String heading) {
    Sheet headed = workbook.getSheet(sheet);
    for (int column = 0; column < headed.getRow(0).getLastCellNum(); column++) {
      if (text(headed, 0, column).equals(heading)) {
        return column;
      }
    }
    throw new IllegalArgumentException("`" + sheet + "` has no heading `" + heading + "`");
  }

  static String text(Sheet sheet, int row, int column) {
    Row at = sheet.getRow(row);
    return at == null ? "" : text(at, column);
  }

  static String text(Row row, int column) {
    return TEXT.formatCellValue(row.getCell(column)).strip();
  }

  /** Types over a cell, and says where and what. */
  static String type(Row row, int column, String text) {
    String was = text(row, column);
    row.getCell(column, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK).setCellValue(text);
    String cell = row.getCell(column).getAddress().formatAsString();
    return row.getSheet().getSheetName() + "!" + cell + ": `" + was + "` to `" + text + "`";
  }

  byte[] bytes() {
    try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
      workbook.write(bytes);
      return bytes.toByteArray();
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }

  @Override
  public void close() {
    try {
      workbook.close();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
