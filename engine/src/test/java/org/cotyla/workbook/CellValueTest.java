package org.cotyla.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.workbook.SampleWorkbook.at;
import static org.cotyla.workbook.SampleWorkbook.changed;
import static org.cotyla.workbook.SampleWorkbook.set;
import static org.cotyla.workbook.SampleWorkbook.soundBytes;

import java.util.function.Consumer;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A cell's text in the grid")
class CellValueTest {

  private static final String PLACE = "Grading!B7";

  @ParameterizedTest
  @CsvSource({
    "0.1, 0.1",
    "30, 30",
    "30.0, 30",
    "1e-7, 0.0000001",
    "123456789012, 123456789012",
    "-0.0, 0",
    "-2.5, -2.5",
    "1e20, 100000000000000000000",
    "0.30000000000000004, 0.30000000000000004",
    "2.2, 2.2",
    "5.684341886080802E-14, 0.000000000000056843418860808015"
  })
  @DisplayName(
      "is, for a number, the decimal that its author wrote, whatever the machine makes of it")
  void number(double stored, String text) {
    assertThat(text(book -> at(book, PLACE).setCellValue(stored))).isEqualTo(text);
  }

  @Test
  @DisplayName("is, for a formula's number, what its author sees: 0.1 + 0.2 is 0.3")
  void formulaNumber() {
    byte[] file = SampleWorkbook.stored("<c r=\"B7\"><f>0.1+0.2</f><v>0.30000000000000004</v></c>");

    assertThat(new GridText(file).at(PLACE)).isEqualTo("0.3");
  }

  @Test
  @DisplayName("is true or false for a logical value")
  void logical() {
    assertThat(text(book -> at(book, PLACE).setCellValue(true))).isEqualTo("true");
    assertThat(text(book -> at(book, PLACE).setCellValue(false))).isEqualTo("false");
  }

  @ParameterizedTest
  @CsvSource({
    "46053, yyyy-mm-dd, 2026-01-31",
    "46053, m/d/yy, 2026-01-31",
    "46053, d-mmm, 2026-01-31",
    "46053, mmm-yy, 2026-01-31",
    "46053.5, yyyy-mm-dd hh:mm, 2026-01-31T12:00",
    "0.25, h:mm, 06:00",
    "0.25, [h], 06:00",
    "46053, '[$-409]d/m/yyyy', 2026-01-31",
    "30, '[Red]0.0', 30",
    "46053, 0.00, 46053",
    "46053, '0 \"days\"', 46053",
    "50, '0 \"%\"', 50",
    "3.5, '# ?/?', 3.5",
    "12, @, 12"
  })
  @DisplayName("is a date in ISO form exactly when the cell's format shows a date")
  void date(double stored, String format, String text) {
    assertThat(text(set(PLACE, stored, format))).isEqualTo(text);
  }

  @Test
  @DisplayName("counts dates from 1904 when the workbook does")
  void from1904() {
    byte[] file =
        Zips.edited(
            changed(set(PLACE, 44591, "yyyy-mm-dd")),
            "xl/workbook.xml",
            text -> text.replace("date1904=\"false\"", "date1904=\"true\""));

    assertThat(new GridText(file).at(PLACE)).isEqualTo("2026-01-31");
  }

  @ParameterizedTest
  @CsvSource({
    "t=\"str\", <f>A1</f><v>text</v>, text",
    "t=\"inlineStr\", <is><r><t>in </t></r><r><t>line</t></r></is>, in line",
    "t=\"str\", <v>new</v><is><t>left behind</t></is>, new",
    "t=\"inlineStr\", <is><t>base</t><rPh><t>guide</t></rPh></is>, base",
    "t=\"d\", <v>2026-01-31T00:00:00</v>, 2026-01-31",
    "t=\"d\", <v>2026-01-31</v>, 2026-01-31",
    "t=\"str\", <f>A1</f><v></v>, ''",
    "t=\"b\", <v>1</v>, true",
    "t=\"str\", <v>a_x000D_b_x005F_c</v>, a b_c",
    "'', <v> 30 </v>, 30",
    "s=\"99\", <v>30</v>, 30"
  })
  @DisplayName("is read in every way that the file format can store it")
  void storedForms(String attributes, String content, String text) {
    byte[] file = SampleWorkbook.stored("<c r=\"B7\" " + attributes + ">" + content + "</c>");

    assertThat(new GridText(file).at(PLACE)).isEqualTo(text);
  }

  @Test
  @DisplayName("keeps curly quotes and autocorrected signs for those who read the cell's meaning")
  void signsAreKept() {
    assertThat(text(set(PLACE, "≤ ½ – “a”"))).isEqualTo("≤ ½ – “a”");
  }

  @Test
  @DisplayName("holds no control characters, which a terminal might obey")
  void noControlCharacters() {
    assertThat(text(set(PLACE, "a_x001B_[31mb\u202e"))).isEqualTo("a[31mb");
  }

  @Test
  @DisplayName("is found although the file leaves out where rows and cells stand")
  void unplacedCells() {
    byte[] file =
        Zips.edited(
            soundBytes(),
            "xl/worksheets/sheet4.xml",
            text ->
                text.replaceFirst(
                    "(?s)<sheetData>.*</sheetData>",
                    "<sheetData><row/><row><c/><c><v>7</v></c></row></sheetData>"));

    assertThat(new GridText(file).at("Grading!B2")).isEqualTo("7");
  }

  private static String text(Consumer<XSSFWorkbook> change) {
    return new GridText(changed(change)).at(PLACE);
  }
}
