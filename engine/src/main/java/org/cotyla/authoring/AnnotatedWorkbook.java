package org.cotyla.authoring;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.CreationHelper;
import org.apache.poi.ss.usermodel.Hyperlink;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.cotyla.caseform.SameBytes;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.RejectedException;
import org.cotyla.workbook.WorkbookText;

/**
 * A copy of a workbook with remarks as comments on their cells, and a first sheet that lists them
 * all. What the workbook says is not touched.
 */
public final class AnnotatedWorkbook {

  private static final String SUMMARY = "Findings";
  private static final List<String> HEADINGS =
      List.of("kind", "code", "cell", "what is remarked", "what helps", "case that shows it");
  private static final List<Integer> WIDTHS = List.of(12, 8, 26, 70, 44, 60);
  private static final int LONGEST_CELL = 32_000;
  private static final int COMMENT_COLUMNS = 5;
  private static final int COMMENT_ROWS = 9;

  /**
   * A remark.
   *
   * @param kind how bad it is, in a word
   * @param place where it is, as people read it
   * @param cell the cell, when it is about one
   * @param message what is remarked
   * @param help what helps; empty when nothing is known to
   * @param example a case that shows it; empty when there is none
   */
  public record Note(
      String kind,
      String code,
      String place,
      java.util.Optional<CellRef> cell,
      String message,
      String help,
      String example) {

    private String comment() {
      return kind
          + " "
          + code
          + ": "
          + message
          + (help.isEmpty() ? "" : "\nHelp: " + help)
          + (example.isEmpty() ? "" : "\nCase: " + example);
    }
  }

  private final XSSFWorkbook workbook;
  private final CreationHelper make;
  private final Dress dress;

  private AnnotatedWorkbook(XSSFWorkbook workbook) {
    this.workbook = workbook;
    this.make = workbook.getCreationHelper();
    this.dress = new Dress(workbook);
  }

  /**
   * The copy.
   *
   * @param name what to call the file in messages
   * @param conclusion one line on all of it
   * @throws RejectedException when the file is not one that may be opened
   */
  public static byte[] of(String name, byte[] file, String conclusion, List<Note> notes) {
    // Our own reader refuses what is not safe to unpack.
    WorkbookText.of(name, file);
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(file))) {
      AnnotatedWorkbook copy = new AnnotatedWorkbook(workbook);
      copy.comments(notes);
      copy.summary(conclusion, notes);
      return SameBytes.packed(workbook);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private void comments(List<Note> notes) {
    Map<CellRef, List<Note>> byCell =
        notes.stream()
            .filter(note -> note.cell().isPresent())
            .collect(
                Collectors.groupingBy(
                    note -> note.cell().orElseThrow(), LinkedHashMap::new, Collectors.toList()));
    byCell.forEach(
        (at, here) -> {
          XSSFSheet sheet = workbook.getSheet(at.sheet());
          if (sheet != null) {
            String text = here.stream().map(Note::comment).collect(Collectors.joining("\n\n"));
            comment(sheet, at, text);
          }
        });
  }

  private void comment(XSSFSheet sheet, CellRef at, String text) {
    Row row = sheet.getRow(at.row()) == null ? sheet.createRow(at.row()) : sheet.getRow(at.row());
    Cell cell = row.getCell(at.column(), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
    Comment there = cell.getCellComment();
    if (there != null) {
      String before = there.getString().getString();
      there.setString(make.createRichTextString(cut(before + "\n\n" + text)));
      return;
    }
    XSSFDrawing drawing = sheet.createDrawingPatriarch();
    ClientAnchor anchor = make.createClientAnchor();
    anchor.setCol1(at.column() + 1);
    anchor.setCol2(at.column() + 1 + COMMENT_COLUMNS);
    anchor.setRow1(at.row());
    anchor.setRow2(at.row() + COMMENT_ROWS);
    Comment comment = drawing.createCellComment(anchor);
    comment.setAuthor("Check");
    comment.setString(make.createRichTextString(cut(text)));
    cell.setCellComment(comment);
  }

  private static String cut(String text) {
    return text.length() <= LONGEST_CELL ? text : text.substring(0, LONGEST_CELL);
  }

  private void summary(String conclusion, List<Note> notes) {
    XSSFSheet sheet = workbook.createSheet(freeName());
    workbook.setSheetOrder(sheet.getSheetName(), 0);
    workbook.setActiveSheet(0);
    workbook.setSelectedTab(0);
    sheet.createRow(0).createCell(0).setCellValue(conclusion);
    Row headings = sheet.createRow(2);
    for (int i = 0; i < HEADINGS.size(); i++) {
      Cell heading = headings.createCell(i);
      heading.setCellValue(HEADINGS.get(i));
      dress.put(heading, Dress.Part.HEADING);
      sheet.setColumnWidth(i, WIDTHS.get(i) * 256);
    }
    for (Note note : notes) {
      line(sheet, note);
    }
    sheet.createFreezePane(0, 3);
    sheet.getPrintSetup().setLandscape(true);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitHeight((short) 0);
  }

  private void line(XSSFSheet sheet, Note note) {
    Row row = sheet.createRow(sheet.getLastRowNum() + 1);
    List<String> cells =
        List.of(
            note.kind(), note.code(), note.place(), note.message(), note.help(), note.example());
    for (int i = 0; i < cells.size(); i++) {
      Cell cell = row.createCell(i);
      cell.setCellValue(cut(cells.get(i)));
      dress.put(cell, Dress.Part.BODY);
    }
    note.cell()
        .filter(at -> workbook.getSheet(at.sheet()) != null)
        .ifPresent(at -> row.getCell(2).setHyperlink(link(at)));
  }

  private Hyperlink link(CellRef at) {
    Hyperlink link = make.createHyperlink(HyperlinkType.DOCUMENT);
    link.setAddress(
        new CellReference(at.sheet(), at.row(), at.column(), false, false).formatAsString());
    return link;
  }

  private String freeName() {
    String name = SUMMARY;
    for (int i = 2; workbook.getSheet(name) != null; i++) {
      name = WorkbookUtil.createSafeSheetName(SUMMARY + " " + i);
    }
    return name;
  }
}
