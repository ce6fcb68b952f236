package org.cotyla.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cotyla.identity.EngineVersion;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The command line")
class CommandLineTest {

  private static final String NOTHING_KNOWN = "{\"findings\": {}}";

  @TempDir private Path folder;

  @Test
  @DisplayName("recommends on a case file, with the caution in the first line, and exits with 0")
  void recommends() throws IOException {
    Run run = Run.of("recommend", file("case.json", NOTHING_KNOWN));
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out()).startsWith("Decision support for licensed surgeons.");
    assertThat(run.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(81));
  }

  @Test
  @DisplayName("reads a case from standard input when the file is called -")
  void readsStandardInput() throws IOException {
    Run fromInput = Run.with(NOTHING_KNOWN, false, "recommend", "-");
    assertThat(fromInput).isEqualTo(Run.of("recommend", file("case.json", NOTHING_KNOWN)));
    assertThat(fromInput.code()).isZero();
  }

  @Test
  @DisplayName("answers in JSON when that is asked for")
  void answersInJson() {
    Run run = Run.with(NOTHING_KNOWN, false, "recommend", "-", "--format", "json");
    assertThat(run.out()).startsWith("{\n  \"format\": 1,\n").endsWith("}\n");
    assertThat(run.code()).isZero();
  }

  @Test
  @DisplayName("takes the house protocol that was built in when the program has no folder")
  void hasItsOwnCopy() {
    Run own = Run.with(NOTHING_KNOWN, false, Optional.empty(), "recommend", "-");
    Run elsewhere = Run.with(NOTHING_KNOWN, false, Optional.of(folder), "recommend", "-");
    assertThat(own).isEqualTo(Run.with(NOTHING_KNOWN, false, "recommend", "-"));
    assertThat(elsewhere).isEqualTo(own);
  }

  @ParameterizedTest(name = "{0}, colour on this terminal: {1}")
  @CsvSource({
    "auto, true, true",
    "auto, false, false",
    "always, false, true",
    "never, true, false"
  })
  @DisplayName("colours its answer only where that was asked for or the terminal takes it")
  void coloursOnlyWhereItMay(String when, boolean takesColour, boolean isColoured) {
    Run run = Run.with(NOTHING_KNOWN, takesColour, "recommend", "-", "--color", when);
    assertThat(run.out().contains("\u001B[")).isEqualTo(isColoured);
  }

  @Test
  @DisplayName("writes a blank case that it can read again")
  void blankCaseRoundTrip() throws IOException {
    Path blank = folder.resolve("blank.json");
    assertThat(Run.of("blank-case", "--output", blank.toString())).isEqualTo(new Run(0, "", ""));
    assertThat(Files.readString(blank)).isEqualTo(Run.of("blank-case").out());
    Run run = Run.of("recommend", blank.toString());
    assertThat(run.code()).isZero();
    assertThat(run.out()).isEqualTo(Run.with(NOTHING_KNOWN, false, "recommend", "-").out());
  }

  @Test
  @DisplayName("leaves no half file behind, and what is there already as it was")
  void writesWholeOrNot() throws IOException {
    Path missing = folder.resolve("no such folder").resolve("blank.json");
    Run run = Run.of("blank-case", "--output", missing.toString());
    assertThat(run)
        .isEqualTo(
            new Run(
                2, "", "error: cannot write " + missing + ": there is no such file or folder\n"));
    assertThat(Run.of("blank-case", "--output", folder.toString()))
        .isEqualTo(new Run(2, "", "error: " + folder + " is a folder, not a file\n"));
    Path old = folder.resolve("old.json");
    Files.writeString(old, "old");
    assertThat(Run.of("blank-case", "--output", old.toString()))
        .isEqualTo(
            new Run(
                2,
                "",
                "error: " + old + " is there already; name a file that is not, or remove it\n"));
    assertThat(old).hasContent("old");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).containsExactly(old);
    }
  }

  @Test
  @DisplayName("names no option as first while nothing certain sets one apart")
  void nothingStandsOut() {
    String answer = Run.with(NOTHING_KNOWN, false, "recommend", "-").out();
    assertThat(answer.replaceAll("\\s+", " "))
        .containsPattern("first construct: open: \\d+ of 13 can still come first")
        .contains("No option stands out yet");
  }

  @Test
  @DisplayName("says on the first page that a value is unusual, since it may be a slip")
  void unusualFirst() {
    String unusual = "{\"findings\": {\"hip centre migration\": 70}}";
    List<String> lines = Run.with(unusual, false, "recommend", "-").out().lines().toList();
    assertThat(lines.subList(0, lines.indexOf("In short")))
        .anyMatch(
            line -> line.startsWith("! case field `hip centre migration`: `70 mm` is unusual"));
  }

  @Test
  @DisplayName("lists every fault of a case with a count, answers nothing and exits with 1")
  void listsFaults() {
    String bad = "{\"titel\": 1, \"findings\": {\"age\": [70]}}";
    assertThat(Run.with(bad, false, "recommend", "-"))
        .isEqualTo(
            new Run(
                1,
                "",
                """
                error C022 case: `titel` is not a key of the case format
                      help: did you mean `title`? (title, stage, note, findings)
                error C023 case field `age`: the finding is a list
                      help: for one of several, it is not known which, write {"one of": [...]}
                2 errors; nothing was done
                """));
  }

  @Test
  @DisplayName("refuses what is no workbook with the workbook's own message and exits with 1")
  void refusesBadWorkbook() throws IOException {
    String notes = file("notes.xlsx", "just words");
    Run run = Run.with(NOTHING_KNOWN, false, "recommend", "-", "--protocol", notes);
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith("error W").contains("notes.xlsx").contains("\n1 error;");
  }

  @Test
  @DisplayName("says in one line that a file is missing or a folder, and exits with 2")
  void saysWhatFileIsMissing() {
    Path missing = folder.resolve("none.json");
    String says = "error: cannot read " + missing + ": there is no such file or folder\n";
    assertThat(Run.of("recommend", missing.toString())).isEqualTo(new Run(2, "", says));
    assertThat(Run.with(NOTHING_KNOWN, false, "recommend", "-", "--protocol", missing.toString()))
        .isEqualTo(new Run(2, "", says));
    assertThat(Run.of("recommend", folder.toString()))
        .isEqualTo(new Run(2, "", "error: " + folder + " is a folder, not a file\n"));
  }

  @ParameterizedTest(name = "cotyla {0}")
  @ValueSource(
      strings = {
        "",
        "advise",
        "recommend",
        "recommend a b",
        "recommend --trase -",
        "recommend - --width 39",
        "recommend - --width wide",
        "recommend - --format xml",
        "recommend - --color blue",
        "blank-case case.json"
      })
  @DisplayName("answers wrong usage with two lines and exits with 2")
  void refusesWrongUsage(String arguments) {
    Run run = Run.of(arguments.isEmpty() ? new String[0] : arguments.split(" "));
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().lines()).hasSize(2);
    assertThat(run.err()).startsWith("error: ").contains("\n      help: cotyla");
  }

  @ParameterizedTest(name = "cotyla {0}")
  @ValueSource(strings = {"--help", "recommend --help", "blank-case --help"})
  @DisplayName("explains itself within 80 columns")
  void explainsItself(String arguments) {
    Run run = Run.of(arguments.split(" "));
    assertThat(run.code()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).startsWith("Usage: cotyla");
    assertThat(run.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(81));
  }

  @Test
  @DisplayName("tells its version")
  void tellsItsVersion() {
    assertThat(Run.of("--version"))
        .isEqualTo(new Run(0, "cotyla " + EngineVersion.current() + "\n", ""));
  }

  @Test
  @DisplayName("reports what nobody foresaw in one line, without a stack trace, and exits with 1")
  void reportsTheUnforeseen() {
    StringWriter said = new StringWriter();
    int code =
        new Complaints(new PrintWriter(said))
            .about(new IllegalStateException("first line\nsecond line"));
    assertThat(code).isEqualTo(1);
    assertThat(said)
        .hasToString(
            "error: something unexpected went wrong, please report it with this line:"
                + " java.lang.IllegalStateException: first line second line\n");
  }

  private String file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }
}
