package org.cotyla.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A case form on the command line")
class FormCommandsTest {

  @TempDir private Path folder;

  @Test
  @DisplayName("is written to a file, and read blank as a case in which nothing is known")
  void blankForm() throws IOException {
    Path form = blank("form.xlsx");
    assertThat(Run.of("recommend", form.toString()))
        .isEqualTo(Run.with("{\"findings\": {}}", false, "recommend", "-"));
  }

  @Test
  @DisplayName("filled in gives the answer that the same case gives as JSON, whatever it is called")
  void filledIn() throws IOException {
    Path form = blank("case.json");
    fill(form, "hip centre migration", "3.4", "cm");
    fill(form, "köhler line", "intact or reached", null);
    String json =
        """
        {"findings": {"hip centre migration": {"value": 3.4, "unit": "cm"},
          "köhler line": {"one of": ["intact", "reached"]}}}
        """;
    assertThat(Run.of("recommend", form.toString(), "--format", "json"))
        .isEqualTo(Run.with(json, false, "recommend", "-", "--format", "json"));
  }

  @Test
  @DisplayName("with a fault is refused with the cell")
  void fault() throws IOException {
    Path form = blank("form.xlsx");
    int row = fill(form, "defect contained", "perhaps", null);
    assertThat(Run.of("recommend", form.toString()))
        .isEqualTo(
            new Run(
                1,
                "",
                "error C004 Case!B"
                    + (row + 1)
                    + ": `perhaps` is not a yes/no\n"
                    + "      help: write yes or no\n"
                    + "1 error; nothing was done\n"));
  }

  @Test
  @DisplayName("needs a file to be written to")
  void needsFile() {
    Run run = Run.of("blank-case", "--format", "xlsx");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err())
        .isEqualTo(
            "error: --format xlsx needs --output FILE: a form is no text\n"
                + "      help: cotyla blank-case --help\n");
  }

  private Path blank(String name) {
    Path form = folder.resolve(name);
    Run run = Run.of("blank-case", "--format", "xlsx", "--output", form.toString());
    assertThat(run).isEqualTo(new Run(0, "", ""));
    return form;
  }

  private static int fill(Path form, String finding, String value, String unit) throws IOException {
    try (XSSFWorkbook workbook =
        new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(form)))) {
      for (Row row : workbook.getSheet("Case")) {
        if (row.getCell(0).getStringCellValue().equals(finding)) {
          row.getCell(1).setCellValue(value);
          if (unit != null) {
            row.getCell(2).setCellValue(unit);
          }
          try (OutputStream out = Files.newOutputStream(form)) {
            workbook.write(out);
          }
          return row.getRowNum();
        }
      }
    }
    throw new IllegalArgumentException(finding);
  }
}
