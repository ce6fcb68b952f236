package org.cotyla.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A lead edits one cell of the house protocol in a spreadsheet")
class LeadEditTest {

  @TempDir private Path folder;

  /** 28 mm up and 55 % on living bone: just short of the line of 30 mm. */
  private final Path givenCase =
      Run.HOME.resolve("test-cases/cases/defect-class/just-short-of-the-line.json");

  @Test
  @DisplayName("before the edit the case is 2B and takes a hemispherical cup")
  void before() {
    Run run = Run.of("recommend", givenCase.toString());

    assertThat(run.out())
        .contains("Defect class: 2B")
        .contains("first construct: hemispherical cup (certain)");
  }

  @Test
  @DisplayName("a moved constant ranks the case differently, and the trace names its cell")
  void movedConstant() throws IOException {
    Path edited = folder.resolve("edited.xlsx");
    String at = edit(edited, "Calculations", "migration line", 1, "25");

    Run run = Run.of("recommend", givenCase.toString(), "--protocol", edited.toString(), "--trace");

    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("Defect class: 3A")
        .contains("first construct: cup with porous metal augments (certain)");
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("hip centre migration = 28 mm meets > migration line")
        .contains("migration line = 25 mm at Calculations!" + at);
  }

  @Test
  @DisplayName("a changed test in a row decides by that row, and the trace names its cell")
  void changedTest() throws IOException {
    Path edited = folder.resolve("edited.xlsx");
    String at = edit(edited, "Defect class", "DC-11", 2, "> 25");

    Run run = Run.of("recommend", givenCase.toString(), "--protocol", edited.toString(), "--trace");

    assertThat(run.out()).contains("Defect class: 3A");
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("hip centre migration = 28 mm meets > 25 at " + at);
  }

  @Test
  @DisplayName("a line that no hip can pass is warned of on the first page, at the cells it kills")
  void lineOutOfReach() throws IOException {
    Path edited = folder.resolve("edited.xlsx");
    edit(edited, "Calculations", "migration line", 1, "500");

    Run run = Run.of("recommend", givenCase.toString(), "--protocol", edited.toString());

    assertThat(run.out().substring(0, run.out().indexOf("In short")).replaceAll("\\s+", " "))
        .contains("`> migration line`, which is `> 500`, can never hold: `hip centre migration` is")
        .containsPattern("! and \\d+ more warnings about the workbook \\(see --trace\\)");
  }

  @Test
  @DisplayName(
      "a slip of the pen is refused at its cell with the nearest word, and nothing is advised")
  void slip() throws IOException {
    Path edited = folder.resolve("edited.xlsx");
    String at = edit(edited, "Defect class", "DC-11", 3, "superolaterel");

    Run run = Run.of("recommend", givenCase.toString(), "--protocol", edited.toString());

    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .contains(
            "Defect class!" + at + ": `superolaterel` is not a value of `migration direction`")
        .contains("did you mean `superolateral`?");
  }

  /** Writes a copy in which one cell of the row that starts with the key is changed. */
  private static String edit(Path to, String sheet, String key, int column, String text)
      throws IOException {
    Path shipped = Run.HOME.resolve("rules/acetabular-revision.xlsx");
    try (InputStream in = Files.newInputStream(shipped);
        XSSFWorkbook workbook = new XSSFWorkbook(in);
        OutputStream out = Files.newOutputStream(to)) {
      DataFormatter shown = new DataFormatter();
      for (Row row : workbook.getSheet(sheet)) {
        if (shown.formatCellValue(row.getCell(0)).equals(key)) {
          Cell cell = row.getCell(column);
          cell.setCellValue(text);
          workbook.write(out);
          return cell.getAddress().formatAsString();
        }
      }
    }
    throw new IllegalArgumentException("no row `" + key + "` in " + sheet);
  }
}
