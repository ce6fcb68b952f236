package org.cotyla.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.workbook.SampleWorkbook.set;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A workbook as text for version control")
class WorkbookTextTest {

  private static String shown(byte[] workbook) {
    return WorkbookText.of("rods.xlsx", workbook);
  }

  @Test
  @DisplayName(
      "has a line for each cell under its row's id or name, and leaves dashes of tests out")
  void layout() {
    assertThat(shown(SampleWorkbook.soundBytes()))
        .startsWith("== Protocol\nidentifier: rods\n")
        .contains("\n[rod length]\n  kind: given\n  type: number\n  unit: mm\n")
        .endsWith(
            """
            == Grading
            decision: Grade of the rod
            hit policy: U
            asks: Which grade is the rod?
            columns: id | when rod length | when finish | then grade | because | source

            [G-1]
              when rod length: < 30
              then grade: A
              because: a short rod bends little
              source: HOUSE

            [G-2]
              when rod length: >= 30
              then grade: B
              because: a long rod bends
              source: HOUSE
            """);
  }

  @Test
  @DisplayName("differs in one line when one cell differs")
  void oneLine() {
    List<String> before = shown(SampleWorkbook.soundBytes()).lines().toList();
    List<String> after =
        new ArrayList<>(shown(SampleWorkbook.changed(set("Grading!B8", ">= 31"))).lines().toList());

    assertThat(after).hasSameSizeAs(before);
    after.removeAll(before);
    assertThat(after).containsExactly("  when rod length: >= 31");
  }

  @Test
  @DisplayName("shows drafts with faults and sheets for people, each cell on one line")
  void anything() {
    byte[] workbook =
        SampleWorkbook.changed(
            book -> {
              set("Grading!C7", "").accept(book);
              set("Grading!E7", "two\nlines \u202e").accept(book);
              SampleWorkbook.write(book, "Scribbles", new String[] {"a", "b", "c"});
            });

    assertThat(shown(workbook))
        .contains("  when finish: (blank)\n", "  because: two lines", "== Scribbles\na: b | c\n")
        .doesNotContain("\u202e");
  }
}
