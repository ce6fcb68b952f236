package org.cotyla.authoring;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.cotyla.caseform.SameBytes;
import org.cotyla.draft.Headings;

/**
 * Writes a protocol to start from: every sheet of the format, a small invented example that runs,
 * and a note on each heading.
 */
public final class NewProtocol {

  private static final String FIRST_SHEET = "Read me";
  private static final int NOTE_COLUMNS = 3;
  private static final int NOTE_LETTERS_A_LINE = 34;

  private final XSSFWorkbook workbook = new XSSFWorkbook();

  private NewProtocol() {}

  /** The workbook's bytes, always the same. */
  public static byte[] write() {
    NewProtocol made = new NewProtocol();
    made.sheets();
    made.notes();
    try {
      return TidyWorkbook.of("new-protocol.xlsx", SameBytes.of(made.workbook), List.of());
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private void sheets() {
    XSSFSheet sheet = workbook.createSheet(FIRST_SHEET);
    int next = 0;
    for (String line : lines("new-protocol.txt")) {
      if (line.startsWith("== ")) {
        String name = line.substring(3);
        sheet = name.equals(FIRST_SHEET) ? sheet : workbook.createSheet(name);
        sheet.setDisplayGridlines(!name.equals(FIRST_SHEET));
        next = 0;
      } else {
        XSSFRow row = sheet.createRow(next++);
        List<String> cells =
            sheet.getSheetName().equals(FIRST_SHEET)
                ? List.of(line)
                : List.of(line.split("\\|", -1));
        for (int i = 0; i < cells.size(); i++) {
          if (!cells.get(i).isBlank()) {
            XSSFCell cell = row.createCell(i);
            cell.setCellValue(cells.get(i).strip());
          }
        }
      }
    }
    workbook.getSheet(FIRST_SHEET).setColumnWidth(0, 110 * 256);
    page();
  }

  private void page() {
    for (Sheet sheet : workbook) {
      sheet.getPrintSetup().setLandscape(true);
      sheet.getPrintSetup().setPaperSize(org.apache.poi.ss.usermodel.PrintSetup.A4_PAPERSIZE);
      sheet.setFitToPage(true);
      sheet.getPrintSetup().setFitWidth((short) 1);
      sheet.getPrintSetup().setFitHeight((short) 0);
    }
  }

  private void notes() {
    for (String line : lines("notes.txt")) {
      List<String> parts = List.of(line.split(" \\| ", 3));
      for (Sheet sheet : workbook) {
        heading(sheet, parts.get(0), parts.get(1)).ifPresent(cell -> note(cell, parts.get(2)));
      }
    }
  }

  private static Optional<Cell> heading(Sheet sheet, String kind, String heading) {
    if (kind.equals("Protocol")) {
      return sheet.getSheetName().equals(kind) ? key(sheet, heading) : Optional.empty();
    }
    boolean isDecision = key(sheet, "decision").isPresent();
    if (kind.equals("decision") && isDecision && Headings.DECISION_HEAD.contains(heading)) {
      return key(sheet, heading);
    }
    return Sheets.table(sheet, isDecision)
        .filter(table -> table.kind().equals(kind))
        .flatMap(
            table ->
                table.headed(heading).stream()
                    .findFirst()
                    .map(column -> sheet.getRow(table.headingRow()).getCell(column.index())));
  }

  private static Optional<Cell> key(Sheet sheet, String word) {
    for (Row row : sheet) {
      Cell first = row.getCell(0);
      if (first != null && Sheets.says(first, word)) {
        return Optional.of(first);
      }
    }
    return Optional.empty();
  }

  private static void note(Cell cell, String words) {
    ClientAnchor anchor = cell.getSheet().getWorkbook().getCreationHelper().createClientAnchor();
    anchor.setCol1(cell.getColumnIndex() + 1);
    anchor.setCol2(cell.getColumnIndex() + 1 + NOTE_COLUMNS);
    anchor.setRow1(cell.getRowIndex());
    anchor.setRow2(cell.getRowIndex() + 2 + words.length() / NOTE_LETTERS_A_LINE);
    Comment comment = cell.getSheet().createDrawingPatriarch().createCellComment(anchor);
    comment.setString(
        cell.getSheet().getWorkbook().getCreationHelper().createRichTextString(words));
    comment.setAuthor("Cotyla");
    cell.setCellComment(comment);
  }

  private static List<String> lines(String resource) {
    try (InputStream in = NewProtocol.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException(resource + " is missing from this build");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }
}
