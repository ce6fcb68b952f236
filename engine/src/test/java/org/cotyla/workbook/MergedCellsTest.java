package org.cotyla.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.workbook.SampleWorkbook.at;
import static org.cotyla.workbook.SampleWorkbook.changed;
import static org.cotyla.workbook.SampleWorkbook.set;

import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.cotyla.issue.Issue;
import org.cotyla.issue.RejectedException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Merged cells")
class MergedCellsTest {

  private static final String HELP =
      "\n      help: split it, and write into each cell what it says";

  /** What is said of the workbook, be it refused or not. */
  private static List<String> remarks(Consumer<XSSFWorkbook> change) {
    byte[] file = changed(change);
    try {
      return Workbooks.read("rods.xlsx", file, List.of()).remarks().stream()
          .map(Issue::plain)
          .toList();
    } catch (RejectedException rejected) {
      return rejected.issues().stream().map(Issue::plain).toList();
    }
  }

  private static Consumer<XSSFWorkbook> merge(String sheet, String cells) {
    return book -> book.getSheet(sheet).addMergedRegion(CellRangeAddress.valueOf(cells));
  }

  private static Consumer<XSSFWorkbook> clear(String cell) {
    return book -> at(book, cell).setBlank();
  }

  @Test
  @DisplayName("in a table hide values that count, which is a warning at the merged cell")
  void hiddenValue() {
    assertThat(remarks(merge("Grading", "C7:C8")))
        .containsExactly(
            "warning W029 Grading!C7: `C7:C8` is one merged cell that hides `-` in C8, which counts"
                + HELP);
    assertThat(remarks(merge("Fields", "G2:G4")))
        .containsExactly(
            "warning W029 Fields!G2: `G2:G4` is one merged cell that hides `planning` in G3, which"
                + " counts"
                + HELP);
  }

  @Test
  @DisplayName("in a table are an error where what seems to hold for several rows holds for one")
  void nothingHidden() {
    assertThat(remarks(clear("Fields!H3").andThen(merge("Fields", "H2:H4"))))
        .containsExactly(
            "error W029 Fields!H2: `H2:H4` is one merged cell, but H3 is read as blank" + HELP);
    assertThat(remarks(clear("Grading!E8").andThen(merge("Grading", "E7:E8"))))
        .contains(
            "error W029 Grading!E7: `E7:E8` is one merged cell, but E8 is read as blank" + HELP);
  }

  @Test
  @DisplayName("beside, above and below a table are nothing to speak of")
  void elsewhere() {
    assertThat(
            remarks(
                set("Grading!G7", "for people")
                    .andThen(merge("Grading", "F7:H7"))
                    .andThen(merge("Grading", "B1:F1"))
                    .andThen(merge("Grading", "A20:F30"))
                    .andThen(merge("Protocol", "B2:D2"))))
        .isEmpty();
  }

  @Test
  @DisplayName("are refused when there are more than any table needs")
  void tooMany() {
    Consumer<XSSFWorkbook> many =
        book -> {
          for (int i = 0; i <= 20_000; i++) {
            book.getSheet("Grading")
                .addMergedRegionUnsafe(new CellRangeAddress(100 + i, 100 + i, 20, 21));
          }
        };
    assertThat(remarks(many))
        .containsExactly(
            "error W051 rods.xlsx: the workbook has more than 20,000 merged cells, the most that is"
                + " read");
  }
}
