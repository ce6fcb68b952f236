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
  @DisplayName("shows to common tools which line was changed or taken away")
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

  @Test
  @DisplayName("shows to common tools a sound signature of something else, in a chain made to fit")
  void showsSignaturesOfSomethingElse(@TempDir Path copied) throws Exception {
    assertThat(rewritten(copied.resolve("a"), 8, "own experience", "general condition"))
        .isEqualTo("1: does not hold: entry 10: what was signed is not what it says\n");
    assertThat(
            rewritten(
                copied.resolve("b"),
                2,
                "\"effectiveFrom\":\"2026-12-01\",\"identifier\"",
                "\"effectiveFrom\":\"2026-11-01\",\"identifier\""))
        .isEqualTo("1: does not hold: entry 2: what was signed is not what it says\n");
    assertThat(rewritten(copied.resolve("c"), 1, "\"role\":\"lead\"", "\"role\":\"guest\""))
        .isEqualTo("1: does not hold: entry 2: its key does not count there\n");
  }

  private String rewritten(Path copied, int sequence, String from, String to) throws Exception {
    LedgerFile copy = new LedgerFile(folder).copyTo(Files.createDirectory(copied));
    try (LedgerFile.Hands hands = copy.hands()) {
      hands.replace(sequence, from, to);
      hands.rechain(sequence);
    }
    Path changed = copied.resolve("ledger.jsonl");
    copy.done("ledger", "export", "--ledger", copy.path("a.ledger"), "-o", changed.toString());
    return verify(changed);
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
