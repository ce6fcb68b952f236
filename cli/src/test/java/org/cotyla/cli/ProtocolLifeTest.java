package org.cotyla.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;

/** One ledger through a protocol's life: each step goes on from the one before. */
@DisplayName("A protocol in a ledger")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class ProtocolLifeTest {

  private static final Path SHIPPED = Run.HOME.resolve("rules/acetabular-revision.xlsx");

  private LedgerFile ledger = new LedgerFile(Path.of(""));
  private Path folder = Path.of("");

  @BeforeAll
  void fill(@TempDir Path made) {
    folder = made;
    ledger = LedgerFile.filled(made);
  }

  private String later(String version, String reviewDue) throws IOException {
    Path file = folder.resolve("later-" + version + ".xlsx");
    try (InputStream in = Files.newInputStream(SHIPPED);
        XSSFWorkbook workbook = new XSSFWorkbook(in);
        OutputStream out = Files.newOutputStream(file)) {
      for (Row row : workbook.getSheet("Protocol")) {
        switch (row.getCell(0).toString()) {
          case "version" -> row.getCell(1).setCellValue(version);
          case "review due" -> row.getCell(1).setCellValue(reviewDue);
          default -> {}
        }
      }
      workbook.write(out);
    }
    return file.toString();
  }

  private Run approve(String workbook, String role, String key) {
    return ledger.run(
        "approve",
        workbook,
        "--as",
        role,
        "--key",
        ledger.path(key),
        "--effective-from",
        "2026-12-10");
  }

  private Run recommend(String workbook, String reference) {
    return Run.of(
        "recommend",
        LedgerFile.CASE,
        "--protocol",
        workbook,
        "--ledger",
        ledger.address(),
        "--case-reference",
        reference);
  }

  private String audit() {
    return ledger.run("audit").out().replaceAll("\\s+", " ");
  }

  private static String flowing(Run run) {
    assertThat(run.code()).as(run.err()).isZero();
    return run.out().replaceAll("\\s+", " ");
  }

  @Test
  @Order(1)
  @DisplayName("that nobody approved is a draft, and a decision under it is named")
  void draft() throws IOException {
    assertThat(flowing(recommend(later("9.0.0", "2027-12-01"), "D-1"))).contains("draft");
    ledger.decide("D-1", "cup with porous metal augments");
    assertThat(audit()).contains("decided under a protocol that was draft: 1 D-1");
  }

  @Test
  @Order(2)
  @DisplayName("is superseded by a later release, which an answer says and an audit counts")
  void superseded() throws IOException {
    String later = later("9.0.0", "2027-12-01");
    assertThat(approve(later, "lead", "lead.key").code()).isZero();
    assertThat(approve(later, "quality lead", "quality.key").code()).isZero();
    assertThat(flowing(recommend(SHIPPED.toString(), "S-1")))
        .contains("superseded")
        .contains("9.0.0");
    ledger.decide("S-1", "cup with porous metal augments");
    assertThat(audit()).contains("decided under a protocol that was superseded: 1 S-1");
  }

  @Test
  @Order(3)
  @DisplayName("whose review was due is told of, and a decision under it is named")
  void reviewDue() throws IOException {
    assertThat(flowing(recommend(later("9.1.0", "2026-11-01"), "O-1"))).contains("review");
    ledger.decide("O-1", "cup with porous metal augments");
    assertThat(audit()).contains("decided under a protocol whose review was due: 1 O-1");
  }

  @Test
  @Order(4)
  @DisplayName("is withdrawn for all that comes after, and not for what was decided before")
  void withdrawn() throws IOException {
    String later = later("9.0.0", "2027-12-01");
    assertThat(flowing(recommend(later, "W-0"))).doesNotContain("withdrawn");
    ledger.decide("W-0", "cup with porous metal augments");
    Run withdrawal =
        ledger.run(
            "withdraw",
            "acetabular-revision",
            "--protocol-version",
            "9.0.0",
            "--because",
            "a threshold was wrong",
            "--as",
            "lead",
            "--key",
            ledger.path("lead.key"));
    assertThat(withdrawal.code()).as(withdrawal.err()).isZero();
    assertThat(flowing(recommend(later, "W-1"))).contains("withdrawn");
    ledger.decide("W-1", "cup with porous metal augments");
    assertThat(audit()).contains("decided under a protocol that was withdrawn: 1 W-1");
  }

  @Test
  @Order(5)
  @DisplayName(
      "cannot be approved with a key that was withdrawn; what that key signed before holds")
  void keyWithdrawn() throws IOException {
    ledger.done("make-key", "--role", "head nurse", "-o", ledger.path("nurse.key"));
    for (String role : new String[] {"lead", "quality lead"}) {
      String key = ledger.path(role.equals("lead") ? "lead.key" : "quality.key");
      ledger.done(
          "ledger",
          "add-key",
          "--ledger",
          ledger.address(),
          "--role",
          "head nurse",
          "--public-key",
          ledger.path("nurse.key.pub"),
          "--as",
          role,
          "--key",
          key);
    }
    Run withdrawal =
        Run.of(
            "ledger",
            "withdraw-key",
            "--ledger",
            ledger.address(),
            "--role",
            "lead",
            "--because",
            "left the house",
            "--as",
            "quality lead",
            "--key",
            ledger.path("quality.key"));
    assertThat(withdrawal.code()).as(withdrawal.err()).isZero();
    assertThat(approve(later("9.2.0", "2027-12-01"), "lead", "lead.key").code()).isEqualTo(1);
    Run verified = ledger.run("verify");
    assertThat(verified.out()).endsWith("\nThe ledger holds\n");
    assertThat(verified.code()).isZero();
  }
}
