package org.cotyla.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("An exported ledger")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LedgerExportTest {

  private Path folder;
  private Path export;

  @BeforeAll
  void export(@TempDir Path made) {
    folder = made;
    export = made.resolve("ledger.jsonl");
    LedgerFile ledger = LedgerFile.filled(made);
    ledger.done(
        "ledger",
        "export",
        "--documents",
        "--ledger",
        ledger.path("a.ledger"),
        "-o",
        export.toString());
  }

  @Test
  @DisplayName("holds by common tools alone, without this program")
  void holds() throws Exception {
    assertThat(verify(export))
        .startsWith("0: 11 entries, 3 signatures, 4 documents hold; last digest sha256:");
  }

  @Test
  @DisplayName("shows to common tools which line was changed, taken away or signed by nobody")
  void shows() throws Exception {
    List<String> lines = Files.readAllLines(export);
    List<String> changed = new ArrayList<>(lines);
    changed.set(7, lines.get(7).replace("own experience", "general condition"));
    assertThat(verify(written(changed))).isEqualTo("1: does not hold: entry 8: its digest\n");
    List<String> shorter = new ArrayList<>(lines);
    shorter.remove(5);
    assertThat(verify(written(shorter))).isEqualTo("1: does not hold: entry 6: its number\n");
    List<String> otherDocument = new ArrayList<>(lines);
    String document = lines.get(11);
    otherDocument.set(11, document.replaceFirst("\"document\":\"..", "\"document\":\"AA"));
    assertThat(verify(written(otherDocument))).startsWith("1: does not hold: document sha256:");
  }

  private Path written(List<String> lines) throws IOException {
    return Files.write(Files.createTempFile(folder, "changed", ".jsonl"), lines);
  }

  private static String verify(Path file) throws IOException, InterruptedException {
    for (String tool : List.of("sh", "jq", "sha256sum", "base64", "openssl")) {
      Process found = new ProcessBuilder("sh", "-c", "command -v " + tool).start();
      Assumptions.assumeTrue(found.waitFor() == 0, tool + " is not installed");
    }
    String script = Run.HOME.resolve("test-cases/verify-export.sh").toString();
    Process run =
        new ProcessBuilder("sh", script, file.toString()).redirectErrorStream(true).start();
    String said = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return run.waitFor() + ": " + said;
  }
}
