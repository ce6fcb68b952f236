package org.cotyla.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.FormulaLibrary;
import org.cotyla.finding.Case;
import org.cotyla.protocol.Protocol;
import org.cotyla.workbook.Workbooks;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The README")
class ReadmeTest {

  private static final String SHIPPED = "test-cases/cases/loose-cup-up-and-out.json";

  @Test
  @DisplayName("shows the true start of the answer to its first command")
  void trueOutput() throws IOException {
    List<String> shown = block("```text");
    List<String> answer =
        Run.of("recommend", Run.HOME.resolve(SHIPPED).toString()).out().lines().toList();

    assertThat(shown).hasSizeGreaterThan(40);
    assertThat(answer.subList(0, shown.size())).isEqualTo(shown);
  }

  @Test
  @DisplayName("embeds the engine with lines that compile and run")
  void embedding() throws IOException {
    List<String> printed = new ArrayList<>();
    Path workbook = Run.HOME.resolve("rules/acetabular-revision.xlsx");
    // README from here
    Protocol protocol = Workbooks.read(workbook, FormulaLibrary.installed());
    Engine engine = Engine.of(protocol);
    Recommendation advice =
        engine.evaluate(Case.of(Map.of("hip centre migration", 34, "köhler line", "broken")));
    RankingResult constructs = advice.ranking("construct").orElseThrow();
    constructs.leader().ifPresent(first -> printed.add(first.name()));
    printed.add(constructs.firstIsCertain() ? "certain" : "hangs on missing data");
    advice.firings().forEach(row -> printed.add(row.row().id() + " " + row.row().because()));
    // README to here
    assertThat(printed).contains("hangs on missing data").hasSizeGreaterThan(50);
  }

  @Test
  @DisplayName("shows no Java but lines of tests that run, each such block once and in this order")
  void java() throws IOException {
    assertThat(blocks("```java"))
        .containsExactly(tested(ReadmeTest.class), tested(ExplanationExampleTest.class));
  }

  private static List<String> block(String fence) throws IOException {
    return blocks(fence).get(0);
  }

  /** Every block of the README that starts with the fence. */
  private static List<List<String>> blocks(String fence) throws IOException {
    List<List<String>> blocks = new ArrayList<>();
    List<String> rest = Files.readAllLines(Run.HOME.resolve("README.md"));
    while (rest.contains(fence)) {
      rest = rest.subList(rest.indexOf(fence) + 1, rest.size());
      blocks.add(rest.subList(0, rest.indexOf("```")));
    }
    assertThat(blocks).as("blocks that start with %s", fence).isNotEmpty();
    return blocks;
  }

  /** The lines between the marks of a test, as they stand in its source. */
  private static List<String> tested(Class<?> test) throws IOException {
    Path source =
        Run.HOME.resolve("cli/src/test/java/" + test.getName().replace('.', '/') + ".java");
    List<String> lines = Files.readAllLines(source);
    int from = lines.indexOf("    // README from here") + 1;
    int to = lines.indexOf("    // README to here");
    return lines.subList(from, to).stream()
        .map(line -> line.isEmpty() ? line : line.substring(4))
        .toList();
  }
}
