package org.cotyla.authoring;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * How cells look. A cell that somebody has styled keeps its font, colours and number format, and is
 * only wrapped and put to the top.
 */
final class Dress {

  private static final String FONT = "Liberation Sans";
  private static final short POINTS = 9;
  private static final int BAND = 0xE3E8EA;
  private static final int KEY = 0xF3F5F6;
  private static final int LINE = 0xB8B8B8;

  /** The parts that a cell can play. */
  enum Part {
    HEADING,
    KEY,
    NAME,
    BODY,
    /** A key's value, which may run over the cells beside it. */
    VALUE
  }

  private final XSSFWorkbook workbook;
  private final Map<String, XSSFCellStyle> made = new HashMap<>();
  private final Map<Boolean, XSSFFont> fonts = new HashMap<>();

  Dress(XSSFWorkbook workbook) {
    this.workbook = workbook;
  }

  /** Dresses the cell, and leaves it alone when it looks so already. */
  void put(Cell cell, Part part) {
    XSSFCellStyle now = (XSSFCellStyle) cell.getCellStyle();
    if (!isSo(now, part)) {
      String key = part + " " + now.getIndex();
      cell.setCellStyle(made.computeIfAbsent(key, k -> style(now, part)));
    }
  }

  private static boolean isSo(XSSFCellStyle style, Part part) {
    if (part == Part.VALUE) {
      return style.getIndex() != 0;
    }
    boolean wrapped = style.getWrapText() && style.getVerticalAlignment() == VerticalAlignment.TOP;
    return wrapped
        && switch (part) {
          case BODY, VALUE -> style.getIndex() != 0;
          case NAME -> style.getFont().getBold();
          case HEADING, KEY -> style.getFont().getBold() && isFilled(style, fill(part));
        };
  }

  private static boolean isFilled(XSSFCellStyle style, XSSFColor colour) {
    XSSFColor now = style.getFillForegroundXSSFColor();
    return style.getFillPattern() == FillPatternType.SOLID_FOREGROUND
        && now != null
        && Arrays.equals(now.getRGB(), colour.getRGB());
  }

  private static XSSFColor fill(Part part) {
    return colour(part == Part.HEADING ? BAND : KEY);
  }

  private XSSFCellStyle style(XSSFCellStyle from, Part part) {
    XSSFCellStyle wanted = workbook.createCellStyle();
    wanted.cloneStyleFrom(from);
    wanted.setWrapText(part != Part.VALUE);
    wanted.setVerticalAlignment(VerticalAlignment.TOP);
    if (part != Part.BODY || from.getIndex() == 0) {
      wanted.setFont(font(part != Part.BODY && part != Part.VALUE));
      wanted.setAlignment(HorizontalAlignment.LEFT);
    }
    if (part != Part.VALUE && (part != Part.BODY || from.getIndex() == 0)) {
      wanted.setBorderBottom(BorderStyle.THIN);
      wanted.setBottomBorderColor(colour(LINE));
    }
    if (part == Part.HEADING || part == Part.KEY) {
      wanted.setFillPattern(FillPatternType.SOLID_FOREGROUND);
      wanted.setFillForegroundColor(fill(part));
    }
    return wanted;
  }

  private XSSFFont font(boolean bold) {
    return fonts.computeIfAbsent(
        bold,
        wanted -> {
          XSSFFont font = workbook.createFont();
          font.setFontName(FONT);
          font.setFontHeightInPoints(POINTS);
          font.setBold(wanted);
          return font;
        });
  }

  private static XSSFColor colour(int rgb) {
    byte[] parts = {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb};
    return new XSSFColor(parts, null);
  }
}
