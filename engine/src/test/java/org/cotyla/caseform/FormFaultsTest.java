package org.cotyla.caseform;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("A fault of a filled-in form")
class FormFaultsTest {

  static Stream<Arguments> values() {
    return Stream.of(
        of(
            "seed depth",
            "deep",
            """
            error C004 Case!B8: `deep` is not a number
                  help: write a number in mm"""),
        of(
            "seed depth",
            "> 50",
            """
            error C004 Case!B8: `> 50` is not a number
                  help: write a number in mm"""),
        of(
            "seed depth",
            "3,5",
            """
            error C012 Case!B8: `3,5` has a comma
                  help: write a decimal with a point, as 3.5"""),
        of(
            "seed depth",
            "81",
            """
            error C006 Case!B8: `81 mm` is outside what is allowed
                  help: allowed: [0..80] mm"""),
        of("seed depth", "9..3", "error C011 Case!B8: the range from 9 to 3 is empty"),
        of(
            "seed depth",
            "3 kg",
            """
            error C007 Case!B8: the unit `kg` does not fit
                  help: this field is in mm"""),
        of(
            "seed depth",
            "3 MM",
            """
            error C008 Case!B8: `MM` is not a unit of UCUM
                  help: this field is in mm; capitals matter"""),
        of(
            "soil",
            "lome",
            """
            error C005 Case!B9: `lome` is not a value of it
                  help: did you mean `loam`? (sand, loam, clay)"""),
        of(
            "soil",
            "sand or peat",
            """
            error C005 Case!B9: `peat` is not a value of it
                  help: expected one of: sand, loam, clay"""),
        of(
            "watered",
            "perhaps",
            """
            error C004 Case!B10: `perhaps` is not a yes/no
                  help: write yes or no"""),
        of(
            "sown on",
            "in spring",
            """
            error C004 Case!B14: `in spring` is not a date
                  help: write a date, as 2026-01-31"""),
        of(
            "root length",
            "4",
            """
            error C010 Case!B18: this is a finding of the stage `potting`, but the case is at `sowing`
                  help: state the stage of the case as `potting`"""),
        of(
            "stage",
            "poting",
            """
            error C009 Case!B5: `poting` is not a stage of this protocol
                  help: did you mean `potting`? (sowing, potting)"""),
        of(
            "soil",
            "clay ".repeat(50),
            """
            error C025 Case!B9: the value has 249 characters
                  help: at most 200"""));
  }

  @ParameterizedTest(name = "{1} in {0}")
  @MethodSource("values")
  @DisplayName("of a value is said at its cell")
  void ofValue(String finding, String text, String says) {
    assertThat(Filled.faults(form -> form.value(finding, text))).isEqualTo(says);
  }

  @Test
  @DisplayName("of a name says which name, and the nearest one")
  void ofName() {
    assertThat(
            Filled.faults(
                form -> {
                  form.value("seed depth", 3);
                  form.cell("seed depth", 0).setCellValue("sed depth");
                }))
        .isEqualTo(
            """
            error C001 Case!B8: this protocol has no field `sed depth`
                  help: did you mean `seed depth`?""");
  }

  @Test
  @DisplayName("of a decision's own field is said at its cell")
  void ofDerived() {
    assertThat(
            Filled.faults(
                form -> {
                  form.value("label", "strong");
                  form.cell("label", 0).setCellValue("vigour");
                }))
        .isEqualTo(
            "error C003 Case!B15: the protocol decides this itself, so a case cannot state it");
  }

  @Test
  @DisplayName("of a row that stands twice names the other cell")
  void twice() {
    assertThat(
            Filled.faults(
                form -> {
                  form.value("soil", "clay");
                  Row copy = form.sheet.createRow(30);
                  copy.createCell(0).setCellValue("Soil");
                  copy.createCell(1).setCellValue("sand");
                }))
        .isEqualTo("error C002 Case!B31: the field is stated twice, also at Case!B9");
  }

  @Test
  @DisplayName("is a value beside no finding, which is never passed over in silence")
  void valueWithoutName() {
    assertThat(Filled.faults(form -> form.sheet.createRow(30).createCell(1).setCellValue("clay?")))
        .isEqualTo(
            """
            error C040 Case!B31: a value stands here, but no finding beside it
                  help: notes may stand anywhere but in the column `value`""");
  }

  @Test
  @DisplayName("is a cell that shows something else than it stores, or a formula's error")
  void ofCell() {
    assertThat(
            Filled.faults(
                form -> {
                  CellStyle percent = form.workbook().createCellStyle();
                  percent.setDataFormat(form.workbook().createDataFormat().getFormat("0%"));
                  form.value("seeds sown", 0.45);
                  form.cell("seeds sown", 1).setCellStyle(percent);
                  form.cell("soil", 1).setCellErrorValue((byte) 0x2A);
                }))
        .isEqualTo(
            """
            error W021 Case!B9: `#N/A` stands here, which is a formula's error and not a value
                  help: put the formula right, or write the value itself
            error W024 Case!B13: the cell shows 45 %, but `0.45` is stored
                  help: give the cell the number format General and write the number that is meant""");
  }

  @Test
  @DisplayName("is a heading that is gone or misspelt")
  void ofHeading() {
    assertThat(Filled.faults(form -> form.cell("finding", 0).setCellValue("findng")))
        .isEqualTo(
            """
            error W037 Case!A6: `findng` is not a heading of the sheet Case
                  help: did you mean `finding`?""");
    assertThat(Filled.faults(form -> form.cell("value", 0).setCellValue("answer")))
        .isEqualTo(
            """
            error W038 Case!A6: no column is headed `value`
                  help: the headings are: finding, value, unit""");
  }

  @Test
  @DisplayName("is a workbook that holds no form")
  void noForm() {
    assertThat(
            Filled.faults(
                form -> {
                  form.workbook().setSheetName(0, "Notes");
                  form.cell("finding", 0).setCellValue("what");
                }))
        .isEqualTo(
            """
            error W050 form.xlsx: no sheet of the workbook is a form that can be read
                  help: its sheet `Case` has the headings: finding, value, unit""");
  }

  @Test
  @DisplayName("does not hide the others: all are listed at once")
  void allAtOnce() {
    assertThat(
            Filled.faults(
                    form -> {
                      form.value("seed depth", "x");
                      form.value("soil", "y");
                      form.value("watered", "z");
                    })
                .lines()
                .filter(line -> line.startsWith("error")))
        .hasSize(3);
  }

  private static Arguments of(String finding, String text, String says) {
    return Arguments.of(finding, text, says);
  }
}
