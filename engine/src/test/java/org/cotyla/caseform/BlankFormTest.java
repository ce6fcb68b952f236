package org.cotyla.caseform;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.cotyla.finding.Case;
import org.cotyla.protocol.Protocol;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("An empty case form")
class BlankFormTest {

  private static XSSFWorkbook workbook;
  private static XSSFSheet sheet;

  @BeforeAll
  static void open() throws IOException {
    workbook = new XSSFWorkbook(new ByteArrayInputStream(Filled.blank()));
    sheet = workbook.getSheetAt(0);
  }

  @Test
  @DisplayName(
      "has title, caution, case title and stage at the top, then every given field once,"
          + " by group in the protocol's order, later stages last")
  void order() {
    List<String> names = new ArrayList<>();
    for (Row row : sheet) {
      names.add(row.getCell(0).getStringCellValue());
    }
    assertThat(names.get(0)).isEqualTo("Raising seedlings: case form");
    assertThat(names.get(1)).isEqualTo("Invented for tests; no gardener follows it.");
    assertThat(names.subList(3, names.size()))
        .containsExactly(
            "case title",
            "stage",
            "finding",
            "Bed",
            "seed depth",
            "soil",
            "watered",
            "shade",
            "Seed",
            "seeds sown",
            "sown on",
            "label",
            "Only at the stage potting: then write potting as the stage above",
            "Roots",
            "root length",
            "root colour");
  }

  @Test
  @DisplayName("says of each field its unit, what is allowed and usual, and what it means")
  void columns() {
    assertThat(row("finding"))
        .containsExactly("finding", "value", "unit", "allowed", "what it means");
    assertThat(row("seed depth"))
        .containsExactly(
            "seed depth",
            "",
            "mm",
            "0 to 80; usually 2 to 40",
            "From the surface to the top of the seed.");
    assertThat(row("soil").get(3)).isEqualTo("sand, loam, clay");
    assertThat(row("watered").get(3)).isEqualTo("yes, no");
    assertThat(row("seeds sown").subList(2, 4)).containsExactly("", "1 to 500");
    assertThat(row("sown on").get(3)).isEqualTo("a date, as 2026-01-31");
    assertThat(row("label").get(3)).isEqualTo("free text");
    assertThat(row("stage").get(1)).isEqualTo("sowing");
  }

  @Test
  @DisplayName(
      "offers the words of a choice, of yes/no and of the stages, and asks back for a"
          + " number out of range, but forbids nothing")
  void rules() {
    assertThat(sheet.getDataValidations())
        .allSatisfy(
            rule -> {
              assertThat(rule.getErrorStyle()).isEqualTo(DataValidation.ErrorStyle.WARNING);
              assertThat(rule.getShowErrorBox()).isTrue();
              assertThat(rule.getEmptyCellAllowed()).isTrue();
            });
    assertThat(offered("stage")).containsExactly("sowing", "potting");
    assertThat(offered("soil")).containsExactly("sand", "loam", "clay");
    assertThat(offered("watered")).containsExactly("yes", "no");
    DataValidation depth = rule("seed depth").orElseThrow();
    assertThat(depth.getValidationConstraint().getFormula1()).isEqualTo("0");
    assertThat(depth.getValidationConstraint().getFormula2()).isEqualTo("80");
    assertThat(depth.getErrorBoxText())
        .isEqualTo(
            "A number, 0 to 80; usually 2 to 40 mm. A range as 70..80; another unit is written into"
                + " the column unit.");
    assertThat(rule("label")).isEmpty();
  }

  @Test
  @DisplayName("keeps its headings in sight, wraps its words and prints on A4 as wide as the page")
  void page() {
    int heading = Filled.rowOf(sheet, "finding");
    assertThat(sheet.getPaneInformation().getHorizontalSplitTopRow())
        .isEqualTo((short) (heading + 1));
    assertThat(sheet.getRepeatingRows().getFirstRow()).isEqualTo(heading);
    assertThat(sheet.getPrintSetup().getPaperSize()).isEqualTo(PrintSetup.A4_PAPERSIZE);
    assertThat(sheet.getPrintSetup().getLandscape()).isFalse();
    assertThat(sheet.getFitToPage()).isTrue();
    assertThat(sheet.getPrintSetup().getFitWidth()).isEqualTo((short) 1);
    assertThat(sheet.getPrintSetup().getFitHeight()).isZero();
    assertThat(sheet.getHeader().getCenter()).contains("Invented for tests");
    Row depth = sheet.getRow(Filled.rowOf(sheet, "seed depth"));
    assertThat(depth.getCell(4).getCellStyle().getWrapText()).isTrue();
  }

  @Test
  @DisplayName("is a case in which nothing is recorded yet")
  void isCase() {
    Case blank = CaseForm.read("form.xlsx", Filled.blank());
    assertThat(blank.title()).isEmpty();
    assertThat(blank.stage()).isEqualTo(Optional.of("sowing"));
    assertThat(blank.findings()).isEmpty();
  }

  @Test
  @DisplayName("is the same to the byte each time, and another for another protocol")
  void sameBytes() throws IOException {
    byte[] once = Filled.blank();
    assertThat(Filled.blank()).isEqualTo(once);
    Protocol other = SeedlingProtocol.changed(text -> text.replace("Counted.", "Weighed."));
    java.io.ByteArrayOutputStream out = new java.io.ByteArrayOutputStream();
    CaseForm.write(other, out);
    assertThat(out.toByteArray()).isNotEqualTo(once);
    assertThat(workbook.getProperties().getCoreProperties().getCreated())
        .isEqualTo("1980-01-01T00:00:00Z");
  }

  private static List<String> row(String name) {
    List<String> cells = new ArrayList<>();
    sheet.getRow(Filled.rowOf(sheet, name)).forEach(cell -> cells.add(cell.getStringCellValue()));
    return cells;
  }

  private static List<String> offered(String name) {
    String range = rule(name).orElseThrow().getValidationConstraint().getFormula1();
    List<String> words = new ArrayList<>();
    var area = new org.apache.poi.ss.util.AreaReference(range, workbook.getSpreadsheetVersion());
    for (var at : area.getAllReferencedCells()) {
      words.add(
          workbook
              .getSheet(at.getSheetName())
              .getRow(at.getRow())
              .getCell(at.getCol())
              .getStringCellValue());
    }
    return words;
  }

  private static Optional<? extends DataValidation> rule(String name) {
    int row = Filled.rowOf(sheet, name);
    return sheet.getDataValidations().stream()
        .filter(rule -> rule.getRegions().getCellRangeAddress(0).isInRange(row, 1))
        .findFirst();
  }
}
