package org.cotyla.testcases.house;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.cotyla.evaluate.Engine;
import org.cotyla.expression.FormulaLibrary;
import org.cotyla.workbook.Workbooks;

/** The house protocol as it stands in the project, and copies of it with one constant changed. */
public final class House {

  private static final Path WORKBOOK =
      Path.of(System.getProperty("cotyla.home", ".."), "rules", "acetabular-revision.xlsx");

  private static final Path CASES =
      Path.of(System.getProperty("cotyla.home", ".."), "test-cases", "cases");

  private House() {}

  /** Read once for all checks of a run. */
  private static final class Held {
    static final Engine ENGINE = Engine.of(Workbooks.read(WORKBOOK, FormulaLibrary.installed()));
  }

  public static Engine engine() {
    return Held.ENGINE;
  }

  /** The folder of cases that ship. */
  public static Path cases() {
    return CASES;
  }

  /** The workbook as it stands in the project. */
  public static byte[] workbook() {
    try {
      return Files.readAllBytes(WORKBOOK);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The protocol with another expression for a constant, as a lead would type it in the sheet. */
  public static Engine withConstant(String name, String expression) {
    try (InputStream in = Files.newInputStream(WORKBOOK);
        XSSFWorkbook workbook = new XSSFWorkbook(in);
        ByteArrayOutputStream copy = new ByteArrayOutputStream()) {
      rowOf(workbook.getSheet("Calculations"), name)
          .getCell(1)
          .setCellValue(new BigDecimal(expression).doubleValue());
      workbook.write(copy);
      return Engine.of(Workbooks.read("copy.xlsx", copy.toByteArray(), FormulaLibrary.installed()));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static Row rowOf(Sheet calculations, String name) {
    DataFormatter text = new DataFormatter();
    return StreamSupport.stream(calculations.spliterator(), false)
        .filter(row -> text.formatCellValue(row.getCell(0)).equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no constant `" + name + "`"));
  }
}
