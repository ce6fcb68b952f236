package org.cotyla.caseform;

import java.util.List;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.cotyla.protocol.About;

/** How wide the columns of a form are and how it prints. */
final class FormPage {

  private static final double MARGIN_INCHES = 0.5;
  private static final int LONGEST_MARGIN_TEXT = 200;

  private final XSSFSheet sheet;

  FormPage(XSSFSheet sheet) {
    this.sheet = sheet;
  }

  void set(About about, int headingRow, int lastRow) {
    List<Integer> widths = RowHeight.WIDTHS;
    for (int column = 0; column < widths.size(); column++) {
      sheet.setColumnWidth(column, widths.get(column) * RowHeight.UNITS_PER_CHARACTER);
    }
    sheet.createFreezePane(0, headingRow + 1);
    sheet.setActiveCell(new CellAddress(headingRow - 2, FormWriter.VALUE));
    sheet.setDisplayGridlines(false);
    sheet.setRepeatingRows(new CellRangeAddress(headingRow, headingRow, -1, -1));
    sheet.getWorkbook().setPrintArea(0, 0, FormWriter.MEANING, 0, lastRow);
    sheet.setFitToPage(true);
    PrintSetup print = sheet.getPrintSetup();
    print.setPaperSize(PrintSetup.A4_PAPERSIZE);
    print.setLandscape(false);
    print.setFitWidth((short) 1);
    print.setFitHeight((short) 0);
    sheet.setMargin(PageMargin.LEFT, MARGIN_INCHES);
    sheet.setMargin(PageMargin.RIGHT, MARGIN_INCHES);
    margins(about);
  }

  /** The caution stands on each printed page, unless it is too long for a margin. */
  private void margins(About about) {
    if (about.caution().length() <= LONGEST_MARGIN_TEXT) {
      sheet.getHeader().setCenter("&8" + escaped(" " + about.caution()));
    }
    sheet.getFooter().setLeft("&8" + escaped(" " + about.identifier() + " " + about.version()));
    sheet.getFooter().setRight("&8 page &P of &N");
  }

  private static String escaped(String words) {
    return words.replace("&", "&&");
  }
}
