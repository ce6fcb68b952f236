package org.cotyla.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.workbook.SampleWorkbook.at;
import static org.cotyla.workbook.SampleWorkbook.changed;
import static org.cotyla.workbook.SampleWorkbook.set;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.cotyla.issue.Issue;
import org.cotyla.protocol.Protocol;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("What people do to a workbook changes nothing:")
class ToleranceTest {

  record Habit(String what, Consumer<XSSFWorkbook> change) {
    @Override
    public String toString() {
      return what;
    }
  }

  static Stream<Habit> habits() {
    return Stream.of(
        new Habit("blank rows between the rules", book -> shift(book, "Grading", 7, 3)),
        new Habit("blank rows above everything", book -> shift(book, "Grading", 0, 2)),
        new Habit("blank rows above the headings", book -> shift(book, "Fields", 0, 4)),
        new Habit("blank rows between headings and names", book -> shift(book, "Grading", 5, 1)),
        new Habit("a blank first column", book -> book.getSheet("Grading").shiftColumns(0, 5, 2)),
        new Habit(
            "a blank column within the table",
            book -> book.getSheet("Grading").shiftColumns(3, 5, 1)),
        new Habit(
            "a merged title above the decision",
            book -> {
              shift(book, "Grading", 0, 2);
              at(book, "Grading!A1").setCellValue("All about the grading of rods");
              book.getSheet("Grading").addMergedRegion(CellRangeAddress.valueOf("A1:F1"));
            }),
        new Habit(
            "a title above the headings",
            book -> {
              shift(book, "Fields", 0, 2);
              at(book, "Fields!A1").setCellValue("Fields of the protocol");
            }),
        new Habit(
            "head keys in another order, one above the decision",
            book -> {
              at(book, "Grading!A1").setCellValue("hit policy");
              at(book, "Grading!B1").setCellValue("U");
              at(book, "Grading!A2").setCellValue("decision");
              at(book, "Grading!B2").setCellValue("Grade of the rod");
            }),
        new Habit(
            "a value further to the right of its key",
            book -> book.getSheet("Protocol").shiftColumns(1, 1, 2)),
        new Habit(
            "keys and headings in other case, with underscores and spaces",
            book -> {
              at(book, "Grading!A2").setCellValue(" Hit_Policy ");
              at(book, "Grading!B5").setCellValue("WHEN");
              at(book, "Fields!C1").setCellValue("Type");
              book.setSheetName(1, "FIELDS");
            }),
        new Habit("non-breaking spaces", set("Fields!A2", "\u00a0rod\u00a0length\u2009")),
        new Habit("invisible characters", set("Fields!A2", "\u200brod length\ufeff")),
        new Habit("a line break in a name", set("Grading!B6", "rod\nlength")),
        new Habit(
            "text in several colours",
            book -> at(book, "Fields!A2").setCellValue(richly(book, "rod length"))),
        new Habit(
            "a column and a row for people",
            book -> {
              at(book, "Grading!G5").setCellValue("owner");
              at(book, "Grading!G7").setCellValue("the lead");
              at(book, "Grading!G12").setCellValue("a remark beside nothing");
              at(book, "Fields!L1").setCellValue("note");
              at(book, "Fields!L9").setCellValue("to be discussed");
              at(book, "Protocol!A9").setCellValue("telephone");
            }),
        new Habit(
            "columns of people's own with headings like `why` and `who`",
            book -> {
              at(book, "Grading!G5").setCellValue("why");
              at(book, "Grading!H5").setCellValue("who");
              at(book, "Fields!L1").setCellValue("notes");
            }),
        new Habit(
            "numbers stored as text and text stored as numbers",
            book -> {
              at(book, "Protocol!B3").setCellValue("1.0.0");
              at(book, "Sources!C2").setCellValue(2026);
            }),
        new Habit(
            "filters, frozen panes, comments and formats",
            book -> {
              XSSFSheet sheet = book.getSheet("Grading");
              sheet.setAutoFilter(CellRangeAddress.valueOf("A5:F8"));
              sheet.createFreezePane(1, 6);
              sheet
                  .createDrawingPatriarch()
                  .createCellComment(book.getCreationHelper().createClientAnchor())
                  .setString(new XSSFRichTextString("why so?"));
              set("Grading!B30", 0, "0.00").accept(book);
              at(book, "Grading!B30").setBlank();
            }),
        new Habit(
            "formatted cells far below that hold nothing",
            book -> {
              set("Grading!B60000", 0, "0.00").accept(book);
              at(book, "Grading!B60000").setBlank();
            }),
        new Habit(
            "a formula whose stored value is text",
            book -> {
              at(book, "Grading!E7").setCellFormula("\"a short rod \"&\"bends little\"");
              at(book, "Grading!E7").setCellValue("a short rod bends little");
            }),
        new Habit(
            "a sheet for charts, and the sheets by which a lead checks it, still empty",
            book -> {
              book.createSheet("Charts");
              book.createSheet("Cases");
              book.createSheet("Safeguards");
            }));
  }

  @ParameterizedTest
  @MethodSource("habits")
  @DisplayName("the same protocol is read, without a remark")
  void sameProtocol(Habit habit) {
    Protocol plain = read(book -> {});

    Protocol read = read(habit.change());

    assertThat(read.remarks()).isEmpty();
    assertThat(read.fields())
        .extracting(field -> field.name())
        .containsExactlyElementsOf(plain.fields().stream().map(field -> field.name()).toList());
    assertThat(read.decisions())
        .singleElement()
        .satisfies(
            table -> {
              assertThat(table.name()).isEqualTo("Grade of the rod");
              assertThat(table.hitPolicy().letters()).isEqualTo("U");
              assertThat(table.asks()).isEqualTo("Which grade is the rod?");
              assertThat(table.inputs()).hasSize(2);
              assertThat(table.outputs()).hasSize(1);
            });
    assertThat(read.allRows().map(row -> row.id())).containsExactly("G-1", "G-2");
    assertThat(read.allRows().map(row -> row.because()))
        .containsExactly("a short rod bends little", "a long rod bends");
  }

  @Test
  @DisplayName("hidden rows, columns and sheets are read, and that is said once for each sheet")
  void hiddenIsSaid() {
    Protocol read =
        read(
            book -> {
              book.getSheet("Grading").getRow(6).setZeroHeight(true);
              book.getSheet("Grading").getRow(7).setZeroHeight(true);
              book.getSheet("Grading").createRow(20).setZeroHeight(true);
              book.getSheet("Fields").setColumnHidden(6, true);
              book.getSheet("Fields").setColumnHidden(30, true);
              book.setSheetHidden(2, true);
            });

    assertThat(read.allRows()).hasSize(2);
    assertThat(read.remarks())
        .extracting(Issue::plain)
        .containsExactly(
            "note W026 Fields!G1: column G hidden, and read",
            "note W026 Sources!A1: the sheet is hidden, and it is read",
            "note W026 Grading!A7: rows 7-8 hidden, and read");
  }

  @Test
  @DisplayName("a sheet that is for people is not read, and that is said")
  void sheetForPeople() {
    Protocol read =
        read(
            book -> {
              book.createSheet("Cover");
              at(book, "Cover!A1").setCellValue("Decisions");
              at(book, "Cover!A2").setCellValue("of the workshop");
              book.createSheet("Empty");
            });

    assertThat(read.remarks())
        .extracting(Issue::plain)
        .containsExactly(
            "note W041 Cover!A1: the sheet is not read, since it does not start with `decision`");
  }

  @Test
  @DisplayName("a date that a spreadsheet program made of 3-5 is remarked on with the way out")
  void dateThatNobodyTyped() {
    byte[] file = changed(set("Grading!B7", 46145, "d-mmm"));

    assertThat(file).isNotEmpty();
    assertThat(new GridText(file).remarks())
        .containsExactly(
            """
            warning W027 Grading!B7: a date or time stands here: `2026-05-03`
                  help: if you typed something like 3-5, 1/2 or 3:5, give the cell the number format Text and type it again""");
  }

  private static Protocol read(Consumer<XSSFWorkbook> change) {
    return Workbooks.read("rods.xlsx", changed(change), List.of());
  }

  private static void shift(XSSFWorkbook book, String name, int from, int by) {
    XSSFSheet sheet = book.getSheet(name);
    sheet.shiftRows(from, sheet.getLastRowNum(), by);
  }

  private static XSSFRichTextString richly(XSSFWorkbook book, String text) {
    XSSFRichTextString rich = new XSSFRichTextString(text);
    var red = book.createFont();
    red.setBold(true);
    rich.applyFont(0, 3, red);
    return rich;
  }
}
