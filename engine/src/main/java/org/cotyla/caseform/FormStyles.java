package org.cotyla.caseform;

import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** How the cells of a form look. Grey bands and frames only repeat what the words say. */
final class FormStyles {

  private static final String FONT = "Liberation Sans";
  private static final int BAND = 0xE3E8EA;
  private static final int LINE = 0xB8B8B8;
  private static final int FRAME = 0x6B767B;

  private final XSSFWorkbook workbook;
  private final short textFormat;

  final XSSFCellStyle title;
  final XSSFCellStyle caution;
  final XSSFCellStyle help;
  final XSSFCellStyle heading;
  final XSSFCellStyle indentedHeading;
  final XSSFCellStyle section;
  final XSSFCellStyle group;
  final XSSFCellStyle name;
  final XSSFCellStyle plain;
  final XSSFCellStyle small;
  final XSSFCellStyle unit;
  final XSSFCellStyle number;
  final XSSFCellStyle word;
  final XSSFCellStyle date;

  FormStyles(XSSFWorkbook workbook) {
    this.workbook = workbook;
    this.textFormat = workbook.createDataFormat().getFormat("@");
    this.title = style(font(13, true));
    this.caution = style(font(9, true));
    this.help = style(font(8, false));
    this.heading = band(font(9, true));
    this.indentedHeading = band(font(9, true));
    indentedHeading.setIndention((short) 1);
    this.section = band(font(10, true));
    this.group = style(font(9, true));
    group.setBorderBottom(BorderStyle.THIN);
    group.setBottomBorderColor(colour(FRAME));
    this.name = lined(font(9, true));
    this.plain = lined(font(9, false));
    this.small = lined(font(8, false));
    small.setIndention((short) 1);
    this.unit = lined(font(9, false));
    unit.setDataFormat(textFormat);
    unit.setIndention((short) 1);
    this.number = value();
    this.word = value();
    word.setDataFormat(textFormat);
    this.date = value();
    date.setDataFormat(workbook.createDataFormat().getFormat("yyyy-mm-dd"));
  }

  private XSSFCellStyle style(XSSFFont font) {
    XSSFCellStyle style = workbook.createCellStyle();
    style.setFont(font);
    style.setWrapText(true);
    style.setVerticalAlignment(VerticalAlignment.TOP);
    style.setAlignment(HorizontalAlignment.LEFT);
    return style;
  }

  private XSSFCellStyle band(XSSFFont font) {
    XSSFCellStyle style = lined(font);
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    style.setFillForegroundColor(colour(BAND));
    return style;
  }

  private XSSFCellStyle lined(XSSFFont font) {
    XSSFCellStyle style = style(font);
    style.setBorderBottom(BorderStyle.THIN);
    style.setBottomBorderColor(colour(LINE));
    return style;
  }

  /** A frame to write in. */
  private XSSFCellStyle value() {
    XSSFCellStyle style = style(font(10, false));
    style.setBorderTop(BorderStyle.THIN);
    style.setBorderBottom(BorderStyle.THIN);
    style.setBorderLeft(BorderStyle.THIN);
    style.setBorderRight(BorderStyle.THIN);
    style.setTopBorderColor(colour(FRAME));
    style.setBottomBorderColor(colour(FRAME));
    style.setLeftBorderColor(colour(FRAME));
    style.setRightBorderColor(colour(FRAME));
    return style;
  }

  private XSSFFont font(int points, boolean bold) {
    XSSFFont font = workbook.createFont();
    font.setFontName(FONT);
    font.setFontHeightInPoints((short) points);
    font.setBold(bold);
    return font;
  }

  private static XSSFColor colour(int rgb) {
    byte[] parts = {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb};
    return new XSSFColor(parts, null);
  }
}
