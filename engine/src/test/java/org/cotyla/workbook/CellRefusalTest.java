package org.cotyla.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.workbook.SampleWorkbook.at;
import static org.cotyla.workbook.SampleWorkbook.changed;
import static org.cotyla.workbook.SampleWorkbook.set;
import static org.cotyla.workbook.SampleWorkbook.soundBytes;

import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.FormulaError;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("A cell that is read and cannot be used is refused, naming the cell:")
class CellRefusalTest {

  private static final String OWN_VALUE = "\n      help: write the value itself";
  private static final String GENERAL =
      "\n      help: give the cell the number format General and write the number that is meant";
  private static final String CLEAR = "\n      help: clear what is not needed, and save again";

  record Bad(String what, Callable<byte[]> file, String said) {
    @Override
    public String toString() {
      return what;
    }
  }

  static Stream<Bad> formulas() {
    return Stream.of(
        new Bad(
            "a formula's error",
            () -> changed(book -> at(book, "Grading!B7").setCellErrorValue(FormulaError.REF)),
            "error W021 Grading!B7: `#REF!` stands here, which is a formula's error and not a value"
                + "\n      help: put the formula right, or write the value itself"),
        new Bad(
            "a formula without a stored value",
            () -> formula("<f>15+15</f><v/>"),
            "error W023 Grading!B7: the formula `=15+15` has no stored value"
                + "\n      help: open the workbook in a spreadsheet program and save it, or write the"
                + " value itself"),
        new Bad(
            "a formula that reads another workbook",
            () -> formula("<f>[1]Prices!$A$1</f><v>30</v>"),
            "error W022 Grading!B7: the formula reads another workbook: `=[1]Prices!$A$1`"
                + OWN_VALUE),
        new Bad(
            "a formula that reads another workbook by its path",
            () -> formula("<f>'C:\\data\\[Prices.xlsx]List'!A1</f><v>30</v>"),
            "error W022 Grading!B7: the formula reads another workbook:"
                + " `='C:\\data\\[Prices.xlsx]List'!A1`"
                + OWN_VALUE),
        new Bad(
            "a formula that reads another workbook by a name",
            () ->
                Zips.edited(
                    formula("<f>Price+1</f><v>30</v>"),
                    "xl/workbook.xml",
                    text ->
                        text.replace(
                            "</sheets>",
                            "</sheets><definedNames><definedName name=\"PRICE\">[2]L!$A$1</definedName>"
                                + "</definedNames>")),
            "error W022 Grading!B7: the formula reads another workbook: `=Price+1`" + OWN_VALUE),
        new Bad(
            "a filled-down copy of a formula that reads another workbook",
            () ->
                Zips.edited(
                    formula("<f t=\"shared\" ref=\"B7:B8\" si=\"0\">[1]L!A1</f><v>30</v>"),
                    "xl/worksheets/sheet4.xml",
                    text ->
                        text.replaceFirst(
                            "<c r=\"B8\".*?</c>",
                            "<c r=\"B8\"><f t=\"shared\" si=\"0\"/><v>3</v></c>")),
            "error W022 Grading!B7: the formula reads another workbook: `=[1]L!A1`"
                + OWN_VALUE
                + "\nerror W022 Grading!B8: the formula reads another workbook: `=`"
                + OWN_VALUE));
  }

  static Stream<Bad> numbers() {
    return Stream.of(
        new Bad(
            "a percentage",
            () -> changed(set("Grading!B7", 0.5, "0%")),
            "error W024 Grading!B7: the cell shows 50 %, but `0.5` is stored" + GENERAL),
        new Bad(
            "a percentage with decimals and colour",
            () -> changed(set("Grading!B7", 0.125, "[Red]0.00%")),
            "error W024 Grading!B7: the cell shows 12.5 %, but `0.125` is stored" + GENERAL),
        new Bad(
            "an edited text beside the old one",
            () ->
                SampleWorkbook.stored(
                    "<c r=\"B7\" t=\"inlineStr\"><v>severe</v><is><t>mild</t></is></c>"),
            "error W028 Grading!B7: the cell holds two texts, `mild` and `severe`"
                + "\n      help: type it again in a spreadsheet program and save the workbook"),
        new Bad(
            "a date before the first",
            () -> changed(set("Grading!B7", -3, "yyyy-mm-dd")),
            "error W025 Grading!B7: the cell has a date's format, but `-3` is no date"
                + "\n      help: give the cell the number format General, or write a date"));
  }

  static Stream<Bad> limits() {
    return Stream.of(
        new Bad(
            "content below row 20,000",
            () -> changed(set("Grading!A20001", "x")),
            "error W016 Grading!A20001: the sheet has content below row 20,000, the last that is read"
                + CLEAR),
        new Bad(
            "content beyond column 200",
            () -> changed(set("Grading!GS3", "x")),
            "error W017 Grading!GS3: the sheet has content beyond column 200, the last that is read"
                + CLEAR),
        new Bad(
            "a text that is too long",
            () ->
                Zips.edited(
                    changed(set("Grading!G7", "LONG")),
                    "xl/sharedStrings.xml",
                    text -> text.replace("LONG", "long".repeat(9000))),
            "error W019 Grading!G7: the cell has more than 32,767 characters, the most that is read"
                + CLEAR),
        new Bad(
            "too many sheets",
            () ->
                changed(
                    book -> {
                      for (int i = 0; i < 197; i++) {
                        book.createSheet();
                      }
                    }),
            "error W015 rods.xlsx: the workbook has more than 200 sheets, the most that is read"),
        new Bad(
            "too many cells",
            () -> withSheetData(manyCells(6000, 180, "<c><v>1</v></c>")),
            "error W018 rods.xlsx: the workbook has more than 1,000,000 cells with content, the most"
                + " that is read"),
        new Bad(
            "one long text in very many cells",
            () ->
                Zips.edited(
                    withSheetData(manyCells(100, 100, "<c t=\"s\"><v>0</v></c>")),
                    "xl/sharedStrings.xml",
                    text -> text.replaceFirst("<t>", "<t>" + "long".repeat(1000))),
            "error W020 rods.xlsx: the workbook has more than 32,000,000 characters in its cells, the"
                + " most that is read"));
  }

  static Stream<Bad> all() {
    return Stream.of(formulas(), numbers(), limits()).flatMap(bad -> bad);
  }

  @ParameterizedTest
  @MethodSource("all")
  @DisplayName("each fault with its cell and advice")
  void refuses(Bad bad) throws Exception {
    assertThat(Rejections.text(bad.file().call())).isEqualTo(bad.said());
  }

  @Test
  @DisplayName("but in a column for people the same cells are no fault")
  void peopleMayWriteAnything() {
    byte[] file =
        changed(
            book -> {
              at(book, "Grading!G5").setCellValue("note");
              at(book, "Grading!G7").setCellErrorValue(FormulaError.NA);
              at(book, "Grading!G8").setCellFormula("1+1");
              set("Fields!M2", 0.5, "0%").accept(book);
            });

    assertThat(Rejections.text(file)).isEmpty();
  }

  private static byte[] formula(String xml) {
    return Zips.edited(
        soundBytes(),
        "xl/worksheets/sheet4.xml",
        text ->
            text.replaceFirst(
                "<c r=\"B7\".*?</c>", Matcher.quoteReplacement("<c r=\"B7\">" + xml + "</c>")));
  }

  private static byte[] withSheetData(String data) {
    return Zips.edited(
        changed(book -> book.createSheet("Notes")),
        "xl/worksheets/sheet5.xml",
        text -> text.replace("<sheetData/>", "<sheetData>" + data + "</sheetData>"));
  }

  private static String manyCells(int rows, int columns, String cell) {
    StringBuilder data = new StringBuilder();
    for (int row = 0; row < rows; row++) {
      // What varies keeps the part from being packed as tightly as a bomb.
      data.append("<row ht=\"").append(Math.abs(row * 2654435761L)).append("\">");
      for (int column = 0; column < columns; column++) {
        data.append(cell);
        data.append(column % 8 == 0 ? "<!--" + Math.abs(row * 40503L * (column + 7)) + "-->" : "");
      }
      data.append("</row>");
    }
    return data.toString();
  }
}
