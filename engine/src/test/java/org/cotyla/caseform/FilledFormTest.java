package org.cotyla.caseform;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.apache.poi.ss.usermodel.Row;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.finding.Findings;
import org.cotyla.issue.Issue;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A form that was filled in")
class FilledFormTest {

  @Test
  @DisplayName("gives title, stage and each value; what is blank is not recorded")
  void plainValues() {
    Findings findings =
        Filled.findings(
            form -> {
              form.cell("case title", 1).setCellValue("Third bed");
              form.cell("stage", 1).setCellValue("Potting");
              form.value("seed depth", 12.5);
              form.value("soil", "Loam");
              form.cell("watered", 1).setCellValue(true);
              form.cell("sown on", 1).setCellValue(LocalDate.of(2026, 4, 2));
              form.value("root colour", "white");
            });
    assertThat(findings.title()).isEqualTo("Third bed");
    assertThat(findings.stage()).isEqualTo("potting");
    assertThat(value(findings, "seed depth")).isEqualTo("12.5");
    assertThat(value(findings, "soil")).isEqualTo("loam");
    assertThat(value(findings, "watered")).isEqualTo("yes");
    assertThat(value(findings, "sown on")).isEqualTo("2026-04-02");
    assertThat(value(findings, "root colour")).isEqualTo("white");
    assertThat(findings.datum("label").map(Datum::knowledge)).contains(Knowledge.MISSING);
  }

  @ParameterizedTest(name = "{1} in {0} is {2}")
  @CsvSource(
      delimiter = ';',
      value = {
        "seed depth; 70..80; [70..80]",
        "seed depth; 7 to 8; [7..8]",
        "seed depth; 7 - 8; [7..8]",
        "seed depth; 10 or 20; 10, 20",
        "seed depth; 10 or 20..30; 10, [20..30]",
        "seed depth; 1.2 cm; 12",
        "seed depth; 1 to 2 cm; [10..20]",
        "soil; sand or clay; clay, sand",
        "soil; sand, loam or clay; clay, loam, sand",
        "shade; none or full; full, none",
        "watered; yes or no; no, yes",
        "label; red or blue; red or blue",
        "label; 3..4; 3..4"
      })
  @DisplayName("may state a range, alternatives and a unit, each as the field takes it")
  void rangesAndAlternatives(String field, String text, String means) {
    assertThat(value(Filled.findings(form -> form.value(field, text)), field)).isEqualTo(means);
  }

  @Test
  @DisplayName("takes a choice that has or in its name as that choice")
  void choiceWithOr() {
    assertThat(value(Filled.findings(form -> form.value("shade", "half or full")), "shade"))
        .isEqualTo("half or full");
  }

  @Test
  @DisplayName("takes the unit that was written beside a value; one in the value itself goes first")
  void otherUnit() {
    assertThat(
            value(
                Filled.findings(
                    form -> {
                      form.value("seed depth", 3.4);
                      form.unit("seed depth", "cm");
                    }),
                "seed depth"))
        .isEqualTo("34");
    assertThat(
            value(
                Filled.findings(
                    form -> {
                      form.value("seed depth", "20 mm");
                      form.unit("seed depth", "cm");
                    }),
                "seed depth"))
        .isEqualTo("20");
  }

  @Test
  @DisplayName(
      "may hold notes in rows and columns of people's own, lie lower and further right, and"
          + " have another name on its tab")
  void tolerance() {
    Findings findings =
        Filled.findings(
            form -> {
              form.value("soil", "clay");
              form.cell("soil", 4).setCellValue("rubbed twice");
              form.sheet.getRow(Filled.rowOf(form.sheet, "soil")).createCell(9).setCellValue("!");
              form.cell("Seed", 0).setCellValue("Of the seed itself");
              Row own = form.sheet.createRow(40);
              own.createCell(0).setCellValue("asked the neighbour");
              own.createCell(3).setCellValue("he does not know");
              form.sheet.shiftRows(0, form.sheet.getLastRowNum(), 3);
              form.sheet.createRow(0).createCell(0).setCellValue("copied by hand");
              form.workbook().setSheetName(0, "Bed 3");
            });
    assertThat(value(findings, "soil")).isEqualTo("clay");
  }

  @Test
  @DisplayName("needs neither the column of units nor a stage")
  void withoutUnitsAndStage() {
    Findings findings =
        Filled.findings(
            form -> {
              form.value("seed depth", 7);
              form.sheet.forEach(row -> removeUnit(row));
              form.cell("stage", 1).setBlank();
            });
    assertThat(value(findings, "seed depth")).isEqualTo("7");
    assertThat(findings.stage()).isEqualTo("sowing");
  }

  @Test
  @DisplayName("takes a dash for not recorded")
  void dash() {
    assertThat(Filled.read(form -> form.value("soil", "-")).findings()).isEmpty();
  }

  @Test
  @DisplayName("has its unusual values remarked on at their cells")
  void remarks() {
    assertThat(Filled.findings(form -> form.value("seed depth", 60)).remarks())
        .extracting(Issue::plain)
        .containsExactly(
            "warning C030 Case!B8: `60 mm` is unusual (usually [2..40])\n"
                + "      help: check the value and its unit");
  }

  private static void removeUnit(Row row) {
    if (row.getRowNum() >= 5 && row.getCell(2) != null) {
      row.removeCell(row.getCell(2));
    }
  }

  private static String value(Findings findings, String field) {
    return findings.datum(field).orElseThrow().value().plain();
  }
}
