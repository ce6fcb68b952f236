package org.cotyla.authoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFDataValidationHelper;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.cotyla.evaluate.Engine;
import org.cotyla.identity.ProtocolDigest;
import org.cotyla.issue.Issue;
import org.cotyla.issue.RejectedException;
import org.cotyla.issue.Severity;
import org.cotyla.protocol.Protocol;
import org.cotyla.trial.Trial;
import org.cotyla.trial.TrialReport;
import org.cotyla.trial.TrialRun;
import org.cotyla.workbook.WorkbookText;
import org.cotyla.workbook.Workbooks;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What an author begins with and keeps in order")
class AuthoringTest {

  private static final byte[] NEW = NewProtocol.write();

  private static Protocol read(byte[] workbook) {
    return Workbooks.read("new.xlsx", workbook, List.of());
  }

  private static byte[] changed(Consumer<XSSFWorkbook> change) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(NEW));
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      change.accept(workbook);
      workbook.write(out);
      return out.toByteArray();
    }
  }

  private static byte[] tidy(byte[] workbook) {
    return TidyWorkbook.of("new.xlsx", workbook, List.of());
  }

  @Test
  @DisplayName("A new protocol has no fault and passes its own cases")
  void newProtocolRuns() {
    Protocol protocol = read(NEW);
    TrialRun run = new TrialRun(Engine.of(protocol));
    Trial.ofWorkbook(protocol).forEach(run::add);
    TrialReport report = run.report();

    assertThat(protocol.remarks()).extracting(Issue::severity).containsOnly(Severity.NOTE);
    assertThat(protocol.checks().safeguards()).hasSize(3);
    assertThat(report.tried()).hasSize(3);
    assertThat(report.allPassed()).isTrue();
  }

  @Test
  @DisplayName("A new protocol is the same to the byte each time, and in order already")
  void newProtocolIsTheSame() {
    assertThat(NewProtocol.write()).isEqualTo(NEW);
    assertThat(tidy(NEW)).isEqualTo(NEW);
  }

  @Test
  @DisplayName("A new protocol explains each heading of the format in a note")
  void notes() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(NEW))) {
      for (String sheet : List.of("Fields", "Options", "Sources", "Changes", "Accepted")) {
        for (Cell heading : workbook.getSheet(sheet).getRow(0)) {
          assertThat(heading.getCellComment()).as(sheet + " " + heading).isNotNull();
        }
      }
      for (String sheet : List.of("Safeguards", "Cases", "Ground")) {
        assertThat(workbook.getSheet(sheet).getCellComments()).hasSizeGreaterThan(4);
      }
    }
  }

  @Test
  @DisplayName("Cells offer the words that they take, and lists in a test are no error")
  void dropDowns() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(NEW))) {
      XSSFDataValidation weather = validation(workbook.getSheet("Ground"), "B8");
      assertThat(weather.getValidationConstraint().getExplicitListValues())
          .containsExactly("-", "dry", "rain", "snow");
      assertThat(weather.getShowErrorBox()).isFalse();
      XSSFDataValidation effect = validation(workbook.getSheet("Footwear"), "F8");
      assertThat(effect.getValidationConstraint().getExplicitListValues())
          .containsExactly("favour", "oppose", "rule out");
      assertThat(effect.getShowErrorBox()).isTrue();
      assertThat(
              validation(workbook.getSheet("Footwear"), "E8")
                  .getValidationConstraint()
                  .getFormula1())
          .isEqualTo("Options!$B$2:$B$4");
    }
  }

  private static XSSFDataValidation validation(XSSFSheet sheet, String cell) {
    org.apache.poi.ss.util.CellReference at = new org.apache.poi.ss.util.CellReference(cell);
    return sheet.getDataValidations().stream()
        .filter(
            rule ->
                java.util.Arrays.stream(rule.getRegions().getCellRangeAddresses())
                    .anyMatch(range -> range.isInRange(at.getRow(), at.getCol())))
        .findFirst()
        .orElseThrow();
  }

  @Test
  @DisplayName("Tidying follows a changed list of allowed values and changes no meaning")
  void tidyFollows() throws IOException {
    byte[] edited =
        changed(
            book -> {
              book.getSheet("Fields").getRow(1).getCell(4).setCellValue("dry, rain, snow, fog");
              book.getSheet("Fields").setColumnWidth(8, 256);
            });
    byte[] tidied = tidy(edited);

    assertThat(ProtocolDigest.of(read(tidied))).isEqualTo(ProtocolDigest.of(read(edited)));
    assertThat(WorkbookText.of("a", tidied)).isEqualTo(WorkbookText.of("a", edited));
    assertThat(tidy(tidied)).isEqualTo(tidied);
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(tidied))) {
      assertThat(
              validation(workbook.getSheet("Ground"), "B8")
                  .getValidationConstraint()
                  .getExplicitListValues())
          .containsExactly("-", "dry", "rain", "snow", "fog");
      assertThat(workbook.getSheet("Fields").getColumnWidth(8)).isGreaterThan(30 * 256);
    }
  }

  @Test
  @DisplayName("Tidying keeps people's sheets, columns, comments, colours and rules")
  void tidyKeeps() throws IOException {
    byte[] edited =
        changed(
            book -> {
              book.createSheet("Scribbles").createRow(3).createCell(2).setCellValue("mine");
              XSSFSheet ground = book.getSheet("Ground");
              XSSFDataValidationHelper helper = new XSSFDataValidationHelper(ground);
              DataValidationConstraint mine =
                  helper.createExplicitListConstraint(new String[] {"asked", "settled"});
              ground.addValidationData(
                  helper.createValidation(mine, new CellRangeAddressList(7, 20, 9, 9)));
              org.apache.poi.xssf.usermodel.XSSFCellStyle red = book.createCellStyle();
              red.cloneStyleFrom(ground.getRow(7).getCell(1).getCellStyle());
              red.setFillPattern(org.apache.poi.ss.usermodel.FillPatternType.SOLID_FOREGROUND);
              red.setFillForegroundColor((short) 10);
              red.setWrapText(false);
              ground.getRow(7).getCell(1).setCellStyle(red);
            });
    try (XSSFWorkbook before = new XSSFWorkbook(new ByteArrayInputStream(edited));
        XSSFWorkbook after = new XSSFWorkbook(new ByteArrayInputStream(tidy(edited)))) {
      assertThat(after.getSheet("Scribbles").getRow(3).getCell(2).getStringCellValue())
          .isEqualTo("mine");
      XSSFSheet ground = after.getSheet("Ground");
      assertThat(validation(ground, "J9").getValidationConstraint().getExplicitListValues())
          .containsExactly("asked", "settled");
      assertThat(ground.getCellComments().keySet())
          .isEqualTo(before.getSheet("Ground").getCellComments().keySet());
      assertThat(ground.getRow(7).getCell(1).getCellStyle().getFillForegroundColor())
          .isEqualTo((short) 10);
      assertThat(ground.getRow(7).getCell(1).getCellStyle().getWrapText()).isTrue();
    }
  }

  @Test
  @DisplayName("A workbook with errors is refused with all of them")
  void refused() throws IOException {
    byte[] faulty =
        changed(
            book -> {
              book.getSheet("Fields").getRow(1).getCell(1).setCellValue("givn");
              book.getSheet("Ground").getRow(7).getCell(1).setCellValue("hail");
            });

    assertThatThrownBy(() -> tidy(faulty))
        .isInstanceOf(RejectedException.class)
        .hasMessageContaining("W114 Fields!B2")
        .hasMessageContaining("W162 Ground!B8");
  }
}
