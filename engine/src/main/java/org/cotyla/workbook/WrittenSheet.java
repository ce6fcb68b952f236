package org.cotyla.workbook;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Fills one sheet from the top, and makes its columns as wide as what stands in them. */
final class WrittenSheet {

  private static final int NARROWEST = 8;
  private static final int WIDEST = 60;

  /** A column's width is told in 256ths of a character. */
  private static final int CHARACTER = 256;

  private final XSSFSheet sheet;
  private final WrittenStyles styles;
  private final List<Integer> widths = new ArrayList<>();
  private int next;

  WrittenSheet(XSSFSheet sheet, WrittenStyles styles) {
    this.sheet = sheet;
    this.styles = styles;
  }

  /** A key and its value. */
  void keyed(String key, String value) {
    XSSFRow row = sheet.createRow(next++);
    cell(row, 0, key, styles.key);
    cell(row, 1, value, styles.plain);
  }

  void heading(List<String> headings) {
    write(headings, styles.heading);
  }

  void row(List<String> texts) {
    write(texts, styles.plain);
  }

  private void write(List<String> texts, XSSFCellStyle style) {
    XSSFRow row = sheet.createRow(next++);
    for (int i = 0; i < texts.size(); i++) {
      cell(row, i, texts.get(i), style);
    }
  }

  private void cell(XSSFRow row, int column, String text, XSSFCellStyle style) {
    XSSFCell cell = row.createCell(column);
    cell.setCellStyle(style);
    while (widths.size() <= column) {
      widths.add(NARROWEST);
    }
    if (!text.isEmpty()) {
      cell.setCellValue(text);
      widths.set(column, Math.max(widths.get(column), Math.min(WIDEST, text.length() + 2)));
    }
  }

  /** Sets the widths and keeps the headings and the first columns in sight. */
  void finish(int frozenRows, int frozenColumns) {
    for (int i = 0; i < widths.size(); i++) {
      sheet.setColumnWidth(i, widths.get(i) * CHARACTER);
    }
    sheet.createFreezePane(frozenColumns, frozenRows);
  }
}
