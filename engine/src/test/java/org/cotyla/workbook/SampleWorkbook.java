package org.cotyla.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Consumer;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A small sound protocol about rods, which the tests change in one place each. */
final class SampleWorkbook {

  private static final String[][] PROTOCOL = {
    {"identifier", "rods"},
    {"title", "Choice of rods"},
    {"version", "1.0.0"},
    {"status", "draft"},
    {"owner", "workshop lead"},
    {"caution", "A demonstration; not for use."},
    {"stages", "planning, workshop"},
  };

  private static final String[][] FIELDS = {
    {"name", "kind", "type", "unit", "allowed", "usual", "stage", "group", "meaning", "source"},
    {
      "rod length",
      "given",
      "number",
      "mm",
      "[0..500]",
      "[10..400]",
      "planning",
      "Rod",
      "Measured from end to end.",
      "HOUSE"
    },
    {
      "finish",
      "given",
      "choice",
      "-",
      "smooth, rough",
      "-",
      "planning",
      "Rod",
      "As the finger feels it.",
      "HOUSE"
    },
    {"grade", "derived", "choice", "-", "A, B", "-", "planning", "Rod", "Its grade.", "HOUSE"},
  };

  private static final String[][] SOURCES = {
    {"key", "citation", "year", "certainty"},
    {"HOUSE", "Opinion of this workshop", "2026", "house opinion"},
  };

  private static final String[][] GRADING = {
    {"decision", "Grade of the rod"},
    {"hit policy", "U"},
    {"asks", "Which grade is the rod?"},
    {},
    {"id", "when", "when", "then", "because", "source"},
    {"", "rod length", "finish", "grade"},
    {"G-1", "< 30", "-", "A", "a short rod bends little", "HOUSE"},
    {"G-2", ">= 30", "-", "B", "a long rod bends", "HOUSE"},
  };

  private SampleWorkbook() {}

  static XSSFWorkbook sound() {
    XSSFWorkbook workbook = new XSSFWorkbook();
    write(workbook, "Protocol", PROTOCOL);
    write(workbook, "Fields", FIELDS);
    write(workbook, "Sources", SOURCES);
    write(workbook, "Grading", GRADING);
    return workbook;
  }

  static byte[] soundBytes() {
    return changed(workbook -> {});
  }

  /** The sound workbook's bytes after a change. */
  static byte[] changed(Consumer<XSSFWorkbook> change) {
    try (XSSFWorkbook workbook = sound()) {
      change.accept(workbook);
      return bytes(workbook);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  static byte[] bytes(XSSFWorkbook workbook) {
    try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      workbook.write(out);
      return out.toByteArray();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  static XSSFSheet write(XSSFWorkbook workbook, String name, String[]... rows) {
    XSSFSheet sheet = workbook.createSheet(name);
    for (int row = 0; row < rows.length; row++) {
      for (int column = 0; column < rows[row].length; column++) {
        if (!rows[row][column].isEmpty()) {
          String place = new CellReference(row, column).formatAsString().replace("$", "");
          at(workbook, name + "!" + place).setCellValue(rows[row][column]);
        }
      }
    }
    return sheet;
  }

  /** The cell at a place such as {@code Grading!B7}, made when it is not there. */
  static XSSFCell at(XSSFWorkbook workbook, String place) {
    int mark = place.indexOf('!');
    CellReference reference = new CellReference(place.substring(mark + 1));
    XSSFSheet sheet = workbook.getSheet(place.substring(0, mark));
    XSSFRow row = sheet.getRow(reference.getRow());
    row = row == null ? sheet.createRow(reference.getRow()) : row;
    XSSFCell cell = row.getCell(reference.getCol());
    return cell == null ? row.createCell(reference.getCol()) : cell;
  }

  static Consumer<XSSFWorkbook> set(String place, String text) {
    return workbook -> at(workbook, place).setCellValue(text);
  }

  static Consumer<XSSFWorkbook> set(String place, double number, String format) {
    return workbook -> {
      XSSFCellStyle style = workbook.createCellStyle();
      style.setDataFormat(workbook.createDataFormat().getFormat(format));
      XSSFCell cell = at(workbook, place);
      cell.setCellValue(number);
      cell.setCellStyle(style);
    };
  }

  static Consumer<XSSFWorkbook> clear(String place) {
    return workbook -> at(workbook, place).setBlank();
  }

  /** The sound workbook in which the cell B7 of Grading is stored as the given XML. */
  static byte[] stored(String cell) {
    return Zips.edited(
        soundBytes(),
        "xl/worksheets/sheet4.xml",
        text -> text.replaceFirst("<c r=\"B7\".*?</c>", cell));
  }
}
