package org.cotyla.testcases.conformance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.TestInstance;

@DisplayName("Decision tables and expressions, against the models of the DMN TCK")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ModelConformanceTest {

  /** A folder of the TCK and a number of results. */
  private record Folder(String name, int results) {}

  /** Folders about decision tables, each with how many results it expects. */
  private static final List<Folder> TABLES =
      List.of(
          new Folder("0004-simpletable-U", 3),
          new Folder("0005-simpletable-A", 3),
          new Folder("0006-simpletable-P1", 3),
          new Folder("0108-first-hitpolicy", 3),
          new Folder("0110-outputOrder-hitpolicy", 3),
          new Folder("0112-ruleOrder-hitpolicy-singleinoutcol", 3),
          new Folder("0114-min-collect-hitpolicy", 2),
          new Folder("0115-sum-collect-hitpolicy", 2),
          new Folder("0116-count-collect-hitpolicy", 2),
          new Folder("0118-multi-priority-hitpolicy", 2),
          new Folder("0119-multi-collect-hitpolicy", 2),
          new Folder("0004-lending", 11),
          new Folder("0008-listGen", 10),
          new Folder("0020-vacation-days", 4),
          new Folder("0035-test-structure-output", 3),
          new Folder("0036-dt-variable-input", 24),
          new Folder("0037-dt-on-bkm-implicit-params", 2),
          new Folder("0040-singlenestedcontext", 3),
          new Folder("0041-multiple-nestedcontext", 3),
          new Folder("0086-import", 2),
          new Folder("0088-no-decision-logic", 1));

  /** Folders about expressions, each with how many results are as expected at the least. */
  private static final List<Folder> EXPRESSIONS =
      List.of(
          new Folder("0001-input-data-string", 1),
          new Folder("0002-input-data-number", 1),
          new Folder("0008-LX-arithmetic", 3),
          new Folder("0100-feel-constants", 2),
          new Folder("0101-feel-constants", 4),
          new Folder("0102-feel-constants", 3),
          new Folder("0105-feel-math", 20),
          new Folder("0106-feel-ternary-logic", 12),
          new Folder("0107-feel-ternary-logic-not", 2),
          new Folder("0007-date-time", 0),
          new Folder("0032-conditionals", 3),
          new Folder("0064-feel-conjunction", 12),
          new Folder("0065-feel-disjunction", 12),
          new Folder("0066-feel-negation", 4),
          new Folder("0068-feel-equality", 18),
          new Folder("0071-feel-between", 11),
          new Folder("0072-feel-in", 86),
          new Folder("0073-feel-comments", 2),
          new Folder("0075-feel-exponent", 3),
          new Folder("0077-feel-nan", 1),
          new Folder("0082-feel-coercion", 11),
          new Folder("0083-feel-unicode", 7),
          new Folder("0093-feel-at-literals", 1),
          new Folder("0099-arithmetic-negation", 2),
          new Folder("0100-arithmetic", 67),
          new Folder("1115-feel-date-function", 11),
          new Folder("1116-feel-time-function", 0),
          new Folder("1117-feel-date-and-time-function", 0),
          new Folder("1120-feel-duration-function", 0));

  /** Decisions of table folders that are over times or durations. */
  private static final Map<String, List<String>> TABLES_BEYOND =
      Map.of(
          "0036-dt-variable-input",
          List.of(
              "Compare Date and Time",
              "Compare Days and Time Duration",
              "Compare Time",
              "Compare Years and Months Duration"));

  private final TckData data = TckData.find();
  private final ConformanceReport report = new ConformanceReport();

  @BeforeEach
  void theDataIsThere() {
    data.assumeThere();
  }

  @TestFactory
  @DisplayName("every decision table gives what is expected, by every hit policy")
  Stream<DynamicTest> tables() {
    return TABLES.stream()
        .map(folder -> DynamicTest.dynamicTest(folder.name(), () -> table(folder)));
  }

  private void table(Folder folder) {
    FolderOutcome outcome = outcome(folder.name());
    assertThat(outcome.wrong()).isEmpty();
    assertThat(outcome.decisionsOutside())
        .isEqualTo(TABLES_BEYOND.getOrDefault(folder.name(), List.of()));
    assertThat(outcome.total()).isGreaterThanOrEqualTo(folder.results());
  }

  @TestFactory
  @DisplayName("no fewer expressions give what is expected than before, and the rest have a reason")
  Stream<DynamicTest> expressions() {
    return EXPRESSIONS.stream()
        .map(folder -> DynamicTest.dynamicTest(folder.name(), () -> expressions(folder)));
  }

  private void expressions(Folder folder) {
    FolderOutcome outcome = outcome(folder.name());
    assertThat(outcome.wrong()).isEmpty();
    assertThat(outcome.passed()).isGreaterThanOrEqualTo(folder.results());
  }

  @Test
  @DisplayName("no folder of the selection is passed over")
  void everyFolderIsTested() {
    List<String> tested =
        Stream.concat(TABLES.stream(), EXPRESSIONS.stream()).map(Folder::name).toList();
    assertThat(tested).containsExactlyInAnyOrderElementsOf(data.folders());
  }

  @AfterAll
  void print() throws IOException {
    if (data.isThere()) {
      Path names = Path.of("target", "conformance-out-of-scope.txt");
      Files.createDirectories(names.getParent());
      Files.writeString(names, report.names());
      System.out.println(report.table() + "Every name out of scope: " + names);
    }
  }

  private FolderOutcome outcome(String folder) {
    FolderOutcome outcome = FolderOutcome.of(folder, TckTests.read(data.folder(folder)));
    report.add(outcome);
    return outcome;
  }
}
