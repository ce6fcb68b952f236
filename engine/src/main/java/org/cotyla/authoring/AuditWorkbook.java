package org.cotyla.authoring;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.cotyla.audit.AuditReport;
import org.cotyla.audit.AuditTable;
import org.cotyla.audit.AuditTable.Cell;
import org.cotyla.audit.AuditTable.Number;
import org.cotyla.audit.AuditTable.Share;
import org.cotyla.audit.AuditTable.Words;
import org.cotyla.caseform.SameBytes;

/** Writes an audit as a workbook, one sheet for each of its tables. */
public final class AuditWorkbook {

  private static final int LETTER = 256;
  private static final int NARROWEST = 12;
  private static final int WIDEST = 60;
  private static final float LINE = 15;
  private static final float HIGHEST = 400;
  private static final int LONGEST_CELL = 32_000;
  private static final String GROUND = "FFDBE5E6";

  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private final XSSFCellStyle heading = style();
  private final XSSFCellStyle words = style();
  private final XSSFCellStyle number = style();
  private final XSSFCellStyle share = style();

  private AuditWorkbook() {
    XSSFFont bold = workbook.createFont();
    bold.setBold(true);
    heading.setFont(bold);
    heading.setFillForegroundColor(ground());
    heading.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    number.setDataFormat(workbook.createDataFormat().getFormat("0"));
    share.setDataFormat(workbook.createDataFormat().getFormat("0.0%"));
    number.setAlignment(HorizontalAlignment.RIGHT);
    share.setAlignment(HorizontalAlignment.RIGHT);
  }

  /** The workbook's bytes, the same for the same tables. */
  public static byte[] write(List<AuditTable> tables) {
    AuditWorkbook made = new AuditWorkbook();
    tables.forEach(made::sheet);
    try {
      return SameBytes.of(made.workbook);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private XSSFCellStyle style() {
    XSSFCellStyle style = workbook.createCellStyle();
    style.setWrapText(true);
    style.setVerticalAlignment(VerticalAlignment.TOP);
    return style;
  }

  private void sheet(AuditTable table) {
    XSSFSheet sheet = workbook.createSheet(table.name());
    XSSFRow head = sheet.createRow(0);
    for (int column = 0; column < table.headings().size(); column++) {
      fill(head.createCell(column), table.headings().get(column), heading);
      sheet.setColumnWidth(column, width(table, column) * LETTER);
    }
    head.setHeightInPoints(height(table, table.headings()));
    int next = 1;
    for (List<Cell> cells : table.rows()) {
      XSSFRow row = sheet.createRow(next++);
      for (int column = 0; column < cells.size(); column++) {
        fill(row.createCell(column), cells.get(column));
      }
      row.setHeightInPoints(
          height(
              table,
              cells.stream().map(cell -> cell instanceof Words text ? text.text() : "").toList()));
    }
    sheet.createFreezePane(0, 1);
    sheet.setAutoFilter(new CellRangeAddress(0, next - 1, 0, table.headings().size() - 1));
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    sheet.getPrintSetup().setLandscape(true);
    sheet.getPrintSetup().setPaperSize(PrintSetup.A4_PAPERSIZE);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitWidth((short) 1);
    sheet.getPrintSetup().setFitHeight((short) 0);
    sheet.getFooter().setCenter(AuditReport.CAUTION.replace("&", "&&"));
  }

  private void fill(XSSFCell cell, Cell content) {
    if (content instanceof Number count) {
      cell.setCellValue(count.number());
      cell.setCellStyle(number);
    } else if (content instanceof Share part) {
      cell.setCellValue(part.share());
      cell.setCellStyle(share);
    } else if (content instanceof Words text) {
      fill(cell, text.text(), words);
    }
  }

  /** As text, whatever it begins with: nothing that was recorded becomes a formula. */
  private static void fill(XSSFCell cell, String text, CellStyle style) {
    cell.setCellValue(text.length() > LONGEST_CELL ? text.substring(0, LONGEST_CELL) : text);
    cell.setCellStyle(style);
  }

  /** As high as the cell with the most lines; nothing works that out when a file is opened. */
  private static float height(AuditTable table, List<String> texts) {
    int most = 1;
    for (int column = 0; column < texts.size(); column++) {
      int room = width(table, column) - 2;
      int lines = 0;
      int used = room;
      for (String word : texts.get(column).split(" ")) {
        if (used + 1 + word.length() > room) {
          lines += (word.length() + room - 1) / room;
          used = 0;
        }
        used += word.length() + 1;
      }
      most = Math.max(most, lines);
    }
    return Math.min(most * LINE, HIGHEST);
  }

  private static int width(AuditTable table, int column) {
    int longest = NARROWEST;
    for (List<Cell> row : table.rows()) {
      if (row.get(column) instanceof Words text) {
        longest = Math.max(longest, text.text().length() + 2);
      }
    }
    return Math.min(longest, WIDEST);
  }

  private static XSSFColor ground() {
    XSSFColor ground = new XSSFColor();
    ground.setARGBHex(GROUND);
    return ground;
  }
}
