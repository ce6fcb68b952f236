package org.cotyla.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.workbook.SampleWorkbook.at;
import static org.cotyla.workbook.SampleWorkbook.clear;
import static org.cotyla.workbook.SampleWorkbook.set;

import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName(
    "A workbook whose sheets are not laid out as the format says is refused, naming the place:")
class SheetRefusalTest {

  private static final String DECISION_HEADINGS =
      "      help: the headings are: id, when, then, because, source";

  record Bad(String what, Consumer<XSSFWorkbook> change, String said) {
    @Override
    public String toString() {
      return what;
    }
  }

  static Stream<Bad> sheets() {
    return Stream.of(
        new Bad(
            "no sheet Protocol",
            book -> book.removeSheetAt(0),
            "error W031 rods.xlsx: the workbook has no sheet `Protocol`"),
        new Bad(
            "no sheet Sources",
            book -> book.removeSheetAt(2),
            "error W031 rods.xlsx: the workbook has no sheet `Sources`"),
        new Bad(
            "a slip in the name of a sheet that must be there",
            book -> book.setSheetName(1, "Feilds"),
            """
            error W031 rods.xlsx: the workbook has no sheet `Fields`
                  help: rename the sheet `Feilds` if that is meant
            error W032 Feilds!A1: the sheet is not read: `Feilds` is not a sheet of the format
                  help: did you mean `Fields`?"""),
        new Bad(
            "a slip in the name of a sheet that may be there",
            book -> SampleWorkbook.write(book, "Calculation", new String[] {"name", "expression"}),
            """
            error W032 Calculation!A1: the sheet is not read: `Calculation` is not a sheet of the format
                  help: did you mean `Calculations`?"""),
        new Bad(
            "two sheets of one name",
            book -> SampleWorkbook.write(book, "FIELDS_", new String[] {"name"}),
            "error W030 FIELDS_!A1: two sheets have one name: `Fields` and `FIELDS_`"));
  }

  static Stream<Bad> protocolKeys() {
    return Stream.of(
        new Bad(
            "a slip in a key of Protocol",
            set("Protocol!A6", "cautoin"),
            """
            error W033 Protocol!A6: `cautoin` is not a key
                  help: did you mean `caution`?"""),
        new Bad(
            "a key of Protocol twice",
            set("Protocol!A5", "Title"),
            "error W034 Protocol!A5: `title` stands twice; the other is at Protocol!B2"));
  }

  static Stream<Bad> headings() {
    return Stream.of(
        new Bad(
            "no headings",
            book -> {
              for (String place : new String[] {"A1", "B1", "C1", "D1"}) {
                at(book, "Sources!" + place).setBlank();
              }
            },
            """
            error W035 Sources!A1: no row of the sheet holds its headings
                  help: write them in one row: key, citation, year, certainty"""),
        new Bad(
            "a heading twice",
            set("Fields!F1", "allowed"),
            "error W036 Fields!F1: the heading `allowed` stands twice"),
        new Bad(
            "a slip in a heading",
            set("Fields!C1", "tpye"),
            """
            error W037 Fields!C1: `tpye` is not a heading of the sheet Fields
                  help: did you mean `type`?"""),
        new Bad(
            "a slip in a heading that may be left out",
            set("Fields!F1", "usuall"),
            """
            error W037 Fields!F1: `usuall` is not a heading of the sheet Fields
                  help: did you mean `usual`?"""),
        new Bad(
            "slips in most headings of a sheet",
            book -> {
              at(book, "Sources!A1").setCellValue("kay");
              at(book, "Sources!B1").setCellValue("citatoin");
              at(book, "Sources!D1").setCellValue("certanty");
            },
            """
            error W037 Sources!A1: `kay` is not a heading of the sheet Sources
                  help: did you mean `key`?
            error W037 Sources!B1: `citatoin` is not a heading of the sheet Sources
                  help: did you mean `citation`?
            error W037 Sources!D1: `certanty` is not a heading of the sheet Sources
                  help: did you mean `certainty`?"""),
        new Bad(
            "a heading that is missing",
            set("Sources!D1", "strength"),
            """
            error W038 Sources!A1: no column is headed `certainty`
                  help: the headings are: key, citation, year, certainty"""));
  }

  static Stream<Bad> decisionHeads() {
    return Stream.of(
        new Bad(
            "a slip in the word that starts a decision sheet",
            set("Grading!A1", "decison"),
            """
            error W040 Grading!A1: the sheet is not read: `decison` stands here
                  help: did you mean `decision`? a decision sheet starts with a row: decision, its name"""),
        new Bad(
            "a hit policy without a decision",
            set("Grading!A1", "table"),
            """
            error W040 Grading!A2: the sheet is not read: `hit policy` stands here
                  help: did you mean `decision`? a decision sheet starts with a row: decision, its name"""),
        new Bad(
            "a table of tests and results without a decision",
            book -> {
              at(book, "Grading!A1").setCellValue("table");
              at(book, "Grading!A2").setCellValue("policy");
            },
            """
            error W040 Grading!A5: the sheet is not read: here starts a table, but no row above starts with `decision`
                  help: a decision sheet starts with a row: decision, its name"""),
        new Bad(
            "a slip in a key of a decision",
            set("Grading!A2", "hit polcy"),
            """
            error W033 Grading!A2: `hit polcy` is not a key
                  help: did you mean `hit policy`?"""),
        new Bad(
            "a key of a decision twice",
            book -> {
              at(book, "Grading!A4").setCellValue("Decision");
              at(book, "Grading!B4").setCellValue("Another");
            },
            "error W034 Grading!A4: `decision` stands twice; the other is at Grading!B1"),
        new Bad(
            "no row of headings in a decision",
            set("Grading!A5", "number"),
            """
            error W042 Grading!A5: no row of the decision sheet starts with `id`
                  help: above the rules stands a row: id, when, ..., then, ..., because, source"""));
  }

  static Stream<Bad> decisionColumns() {
    return Stream.of(
        new Bad(
            "no test in a decision",
            book -> {
              at(book, "Grading!B5").setCellValue("if");
              at(book, "Grading!C5").setCellValue("if");
            },
            "error W043 Grading!A5: no column of the decision sheet is headed `when`\n"
                + DECISION_HEADINGS),
        new Bad(
            "no result in a decision",
            set("Grading!D5", "result"),
            "error W043 Grading!A5: no column of the decision sheet is headed `then`\n"
                + DECISION_HEADINGS),
        new Bad(
            "no because in a decision",
            set("Grading!E5", "reason"),
            "error W043 Grading!A5: no column of the decision sheet is headed `because`\n"
                + DECISION_HEADINGS),
        new Bad(
            "no source in a decision",
            clear("Grading!F5"),
            "error W043 Grading!A5: no column of the decision sheet is headed `source`\n"
                + DECISION_HEADINGS),
        new Bad(
            "a slip in the heading of one of two tests",
            set("Grading!C5", "wehn"),
            """
            error W044 Grading!C5: `wehn` is not a heading of a decision sheet
                  help: did you mean `when`? head a column for people `note`"""),
        new Bad(
            "another word over the name of a test",
            set("Grading!C5", "if"),
            """
            error W039 Grading!C5: `if` is not a heading of a decision sheet, but `finish` is named \
            beneath it
                  help: write `when` or `then`; head a column for people `note`"""),
        new Bad(
            "a slip in the only because",
            set("Grading!E5", "becuase"),
            """
            error W044 Grading!E5: `becuase` is not a heading of a decision sheet
                  help: did you mean `because`? head a column for people `note`"""),
        new Bad(
            "two columns of sources",
            set("Grading!G5", "source"),
            """
            error W036 Grading!G5: the heading `source` stands twice
                  help: name all in one column"""),
        new Bad(
            "no row of names",
            book -> {
              book.getSheet("Grading").removeRow(book.getSheet("Grading").getRow(5));
            },
            """
            error W045 Grading!A7: beneath the row that starts with `id` stands no row of names
                  help: write there what each column tests or gives, and leave the cell beneath `id` blank"""),
        new Bad(
            "nothing at all beneath the headings",
            book -> {
              for (int row = 5; row < 8; row++) {
                book.getSheet("Grading").removeRow(book.getSheet("Grading").getRow(row));
              }
            },
            """
            error W045 Grading!A5: beneath the row that starts with `id` stands no row of names
                  help: write there what each column tests or gives, and leave the cell beneath `id` blank"""),
        new Bad(
            "a test without a name",
            clear("Grading!C6"),
            """
            error W046 Grading!C6: a column headed `when` has no name beneath
                  help: write the name of what it tests or gives"""),
        new Bad(
            "a result without a name",
            clear("Grading!D6"),
            """
            error W046 Grading!D6: a column headed `then` has no name beneath
                  help: write the name of what it tests or gives"""),
        new Bad(
            "a name under a blank heading, as a merged heading leaves it",
            clear("Grading!C5"),
            """
            error W047 Grading!C6: `finish` has no heading above it
                  help: write `when`, `then` or `note` in the cell above; a merged heading counts for its first column only"""));
  }

  static Stream<Bad> rows() {
    return Stream.of(
        new Bad(
            "a row without an id",
            clear("Grading!A8"),
            """
            error W048 Grading!A8: the row has content but no id
                  help: give it an id that was never used"""),
        new Bad(
            "an id without a row",
            set("Grading!A10", "Checked by the workshop lead"),
            """
            error W049 Grading!A10: the row has the id `Checked by the workshop lead` and nothing else
                  help: fill it in, or move a remark to a column for people, headed `note`"""),
        new Bad(
            "several faults, each said once and in one go",
            book -> {
              at(book, "Grading!A8").setBlank();
              at(book, "Grading!C7").setCellErrorValue(FormulaError.NA);
              at(book, "Grading!D7").setCellValue("C");
              at(book, "Fields!B1").setCellValue("knid");
              at(book, "Fields!I2").setBlank();
            },
            """
            error W037 Fields!B1: `knid` is not a heading of the sheet Fields
                  help: did you mean `kind`?
            error W021 Grading!C7: `#N/A` stands here, which is a formula's error and not a value
                  help: put the formula right, or write the value itself
            error W048 Grading!A8: the row has content but no id
                  help: give it an id that was never used
            error W120 Fields!I2: field `rod length` has no meaning
            error W163 Grading!D7: `C` is not a value of `grade`
                  help: expected one of: A, B"""));
  }

  static Stream<Bad> all() {
    return Stream.of(
            sheets(), protocolKeys(), headings(), decisionHeads(), decisionColumns(), rows())
        .flatMap(bad -> bad);
  }

  @ParameterizedTest
  @MethodSource("all")
  @DisplayName("each fault with its place and advice")
  void refuses(Bad bad) {
    assertThat(Rejections.text(SampleWorkbook.changed(bad.change()))).isEqualTo(bad.said());
  }
}
