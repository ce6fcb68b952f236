package org.cotyla.testcases.dmn;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.expression.StandardFunctions;
import org.cotyla.finding.Case;
import org.cotyla.json.CaseJson;
import org.cotyla.testcases.house.HardCases;
import org.cotyla.testcases.house.House;
import org.cotyla.testcases.house.OrdinaryCase;
import org.cotyla.testcases.house.PlausibleCases;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The exported house protocol in Drools' DMN engine")
class HouseModelTest {

  private static final int GENERATED = 1000;
  private static final Engine ENGINE = House.engine();
  private static DroolsModel model;

  @BeforeAll
  static void build() {
    model = new DroolsModel(ENGINE.protocol());
  }

  private static void same(String name, Recommendation advice) {
    assertThat(advice.faults()).as(name).isEmpty();
    assertThat(SameAnswer.differences(model.export(), advice, model.run(advice)))
        .as(name)
        .isEmpty();
  }

  @Test
  @DisplayName("is a model that Drools has nothing to remark on")
  void noRemarks() {
    assertThat(model.remarks()).isEmpty();
  }

  @Test
  @DisplayName("leaves to the host only what calls a function that FEEL does not have")
  void hostValues() {
    assertThat(model.export().hostValues())
        .isNotEmpty()
        .extracting(host -> host.call().function().name())
        .doesNotContainAnyElementsOf(
            StandardFunctions.all().stream().map(FormulaFunction::name).toList());
  }

  @Test
  @DisplayName("gives the same answer to every case of the library, filled in where it is open")
  void library() throws IOException {
    List<Path> cases = libraryCases();
    assertThat(cases).hasSizeGreaterThan(200);
    for (Path file : cases) {
      same(file.toString(), Completed.advice(ENGINE, CaseJson.read(Files.readAllBytes(file))));
    }
  }

  private static List<Path> libraryCases() throws IOException {
    Path home = Path.of(System.getProperty("cotyla.home", ".."));
    try (Stream<Path> files = Files.walk(home.resolve("test-cases").resolve("cases"))) {
      return files
          .filter(file -> file.toString().endsWith(".json"))
          .filter(file -> !file.toString().endsWith(".expected.json"))
          .sorted()
          .toList();
    }
  }

  @Test
  @DisplayName("gives the same answer to 1,000 cases in which bone and findings hang together")
  void plausibleCases() {
    generated(PlausibleCases::drawn);
  }

  @Test
  @DisplayName("gives the same answer to 1,000 cases in which every finding is drawn by itself")
  void hardCases() {
    generated(HardCases::drawn);
  }

  private static void generated(LongFunction<OrdinaryCase> cases) {
    LongStream.range(0, GENERATED)
        .mapToObj(cases)
        .forEach(
            drawn -> {
              String stage = drawn.isInTheatre() ? "theatre" : "planning";
              Case given = Case.of(drawn.findings()).atStage(stage);
              same(drawn.toString(), Completed.advice(ENGINE, given));
            });
  }
}
