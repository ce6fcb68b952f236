package org.cotyla.caseform;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.cotyla.protocol.Protocol;
import org.cotyla.workbook.Workbooks;

/** An invented protocol about seedlings, with a field of every type and two stages. */
public final class SeedlingProtocol {

  private SeedlingProtocol() {}

  public static Protocol protocol() {
    return changed(text -> text);
  }

  /** The same with its text changed. */
  public static Protocol changed(UnaryOperator<String> change) {
    return Workbooks.read("seedlings.xlsx", workbook(change.apply(text())), List.of());
  }

  private static String text() {
    try (InputStream in = SeedlingProtocol.class.getResourceAsStream("seedlings.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static byte[] workbook(String text) {
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      XSSFSheet sheet = null;
      for (String line : text.lines().toList()) {
        if (line.startsWith("== ")) {
          sheet = workbook.createSheet(line.substring(3));
        } else if (!line.isBlank()) {
          XSSFRow row = sheet.createRow(sheet.getPhysicalNumberOfRows());
          for (String cell : line.split("\\|", -1)) {
            row.createCell(Math.max(0, row.getLastCellNum())).setCellValue(cell.strip());
          }
        }
      }
      workbook.write(out);
      return out.toByteArray();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }
}
