package org.cotyla.workbook;

import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** How the cells of a written workbook look. */
final class WrittenStyles {

  private static final String BAND = "FFE3E8EA";

  private final XSSFWorkbook workbook;
  final XSSFCellStyle heading;
  final XSSFCellStyle key;
  final XSSFCellStyle plain;

  WrittenStyles(XSSFWorkbook workbook) {
    this.workbook = workbook;
    this.heading = style(true);
    heading.setFillForegroundColor(band());
    heading.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    this.key = style(true);
    this.plain = style(false);
  }

  private static XSSFColor band() {
    XSSFColor band = new XSSFColor();
    band.setARGBHex(BAND);
    return band;
  }

  /** Text as it is typed: no spreadsheet program makes a date or a number of it. */
  private XSSFCellStyle style(boolean bold) {
    XSSFFont font = workbook.createFont();
    font.setFontName("Liberation Sans");
    font.setFontHeightInPoints((short) 10);
    font.setBold(bold);
    XSSFCellStyle style = workbook.createCellStyle();
    style.setFont(font);
    style.setWrapText(true);
    style.setVerticalAlignment(VerticalAlignment.TOP);
    style.setDataFormat(workbook.createDataFormat().getFormat("@"));
    return style;
  }
}
