package org.cotyla.caseform;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.cotyla.finding.Case;
import org.cotyla.finding.Findings;
import org.cotyla.finding.FindingsReader;
import org.cotyla.issue.RejectedException;
import org.cotyla.protocol.Protocol;

/** The form of the seedlings as somebody has filled it in. */
final class Filled {

  private static final Protocol PROTOCOL = SeedlingProtocol.protocol();
  private static final byte[] BLANK = blank();

  private final XSSFWorkbook workbook;
  final XSSFSheet sheet;

  private Filled() {
    try {
      this.workbook = new XSSFWorkbook(new ByteArrayInputStream(BLANK));
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    this.sheet = workbook.getSheet("Case");
  }

  static byte[] blank() {
    try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      CaseForm.write(PROTOCOL, out);
      return out.toByteArray();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** The bytes of the form after somebody's work on it. */
  static byte[] by(Consumer<Filled> work) {
    Filled form = new Filled();
    work.accept(form);
    try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      form.workbook.write(out);
      form.workbook.close();
      return out.toByteArray();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  static Case read(Consumer<Filled> work) {
    return CaseForm.read("form.xlsx", by(work));
  }

  static Findings findings(Consumer<Filled> work) {
    return new FindingsReader(PROTOCOL).read(read(work));
  }

  /** Everything that is said against the form; empty when nothing is. */
  static String faults(Consumer<Filled> work) {
    try {
      findings(work);
      return "";
    } catch (RejectedException rejected) {
      return rejected.getMessage();
    }
  }

  XSSFWorkbook workbook() {
    return workbook;
  }

  void value(String finding, String text) {
    cell(finding, 1).setCellValue(text);
  }

  void value(String finding, double number) {
    cell(finding, 1).setCellValue(number);
  }

  void unit(String finding, String code) {
    cell(finding, 2).setCellValue(code);
  }

  /** The cell so far to the right of a name. */
  XSSFCell cell(String name, int right) {
    for (Row row : sheet) {
      for (Cell cell : row) {
        if (name.equals(text(cell))) {
          return sheet.getRow(row.getRowNum()).getCell(cell.getColumnIndex() + right);
        }
      }
    }
    throw new IllegalArgumentException(name);
  }

  private static String text(Cell cell) {
    return switch (cell.getCellType()) {
      case STRING -> cell.getStringCellValue();
      default -> "";
    };
  }

  static int rowOf(Sheet sheet, String name) {
    for (Row row : sheet) {
      if (row.getCell(0) != null && name.equals(text(row.getCell(0)))) {
        return row.getRowNum();
      }
    }
    throw new IllegalArgumentException(name);
  }
}
