package org.cotyla.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.cotyla.audit.AuditReport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AuditCommandTest {

  private LedgerFile ledger;
  private Path folder;

  @BeforeAll
  void fill(@TempDir Path made) {
    folder = made;
    ledger = LedgerFile.filled(made);
  }

  @Test
  @DisplayName("The text counts what was recorded, fits 80 columns and carries the cautions")
  void text() {
    Run run = ledger.run("audit");
    assertThat(run.code()).as(run.err()).isZero();
    String flowing = run.out().replaceAll("\\s+", " ");
    assertThat(flowing)
        .contains(AuditReport.CAUTION)
        .contains(AuditReport.SMALL_NUMBERS)
        .contains("Decisions 2 ")
        .contains("own experience 1")
        .contains("advised in the period, no decision: 1 R-3")
        .contains("last entry: 11");
    assertThat(run.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThan(81));
  }

  @Test
  @DisplayName("The text is, to the letter, what the golden file says")
  void golden() {
    Golden.matches("audit.txt", TamperingTest.masked(ledger.run("audit").out()));
  }

  @Test
  @DisplayName("Every decision can be listed, a line for each ranking, with its entry")
  void list() throws IOException {
    Path file = folder.resolve("decisions.csv");
    Run run = ledger.run("audit", "--list", file.toString());
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(Files.readAllLines(file))
        .hasSize(5)
        .anySatisfy(
            line ->
                assertThat(line)
                    .startsWith("entry 8,R-2,2026-12-15,consultant,")
                    .contains(",construct,cup-cage,")
                    .contains(",own experience,"));
  }

  @Test
  @DisplayName("Outside of the period nothing is counted")
  void period() {
    Run run = ledger.run("audit", "--to", "2026-11-30");
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("Decisions  0");
  }

  @Test
  @DisplayName("The page runs nothing, loads nothing and names every ranking")
  void page() {
    Run run = ledger.run("audit", "--format", "html");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("<svg")
        .contains("Construct")
        .contains("Bearing")
        .doesNotContain("<script")
        .doesNotContain("src=");
  }

  @Test
  @DisplayName(
      "CSV has one figure a line under one heading, and the format follows the file's name")
  void csv() throws IOException {
    Path file = folder.resolve("audit.csv");
    assertThat(ledger.run("audit", "-o", file.toString()).code()).isZero();
    assertThat(Files.readString(file))
        .startsWith("table,name 1,name 2,name 3,figure,value\r\n")
        .contains("Concordance,construct,,,judged,2\r\n");
    assertThat(ledger.run("audit", "-o", file.toString()).code()).as("not replaced").isEqualTo(2);
  }

  @Test
  @DisplayName("A workbook on standard output and a period that ends before it starts are refused")
  void wrongUsage() {
    assertThat(ledger.run("audit", "--format", "xlsx").code()).isEqualTo(2);
    assertThat(ledger.run("audit", "--from", "2026-02-01", "--to", "2026-01-01").code())
        .isEqualTo(2);
    assertThat(ledger.run("audit", "--from", "yesterday").code()).isEqualTo(2);
  }
}
