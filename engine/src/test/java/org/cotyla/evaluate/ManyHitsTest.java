package org.cotyla.evaluate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ManyHitsTest {

  private static final Map<String, Object> WIDE = Map.of("width", 60, "grade", "low");

  @ParameterizedTest(name = "{0}")
  @DisplayName("R and C list all rows in the order of the sheet, O by priority")
  @CsvSource({
    "R, K-1 decides;K-2 decides",
    "C, K-1 decides;K-2 decides",
    "O, K-2 decides;K-1 decides"
  })
  void lists(String policy, String rows) {
    DecisionResult result =
        SmallProtocol.classes(policy, "> 50|-|C", "-|low|A", "< 9|-|B").decision("Class", WIDE);
    assertThat(SmallProtocol.standings(result)).containsExactly(rows.split(";"));
    assertThat(result.outputs()).isEmpty();
    assertThat(result.isCertain()).isTrue();
  }

  @ParameterizedTest(name = "{0}: {1}, open {2}")
  @DisplayName(
      "Aggregates are one number of all rows that match, and hold every way when rows are open")
  @CsvSource(
      delimiter = '|',
      value = {"C+ | 12 | 5, 7, 10, 12", "C< | 2  | [2..5]", "C> | 5  | 5", "C# | 3  | 1, 2, 3"})
  void aggregates(String policy, String known, String open) {
    SmallProtocol protocol = SmallProtocol.numbers(policy, "-|5", "> 50|2", "> 40|5", "< 0|9");
    protocol.assertNumber(WIDE, known);
    // Over an open width the second and third row may match, each by itself.
    protocol.assertNumber(Map.of(), open);
  }

  @ParameterizedTest(name = "{0}")
  @DisplayName("An aggregate of no rows is nothing, the count 0, or what the default row says")
  @CsvSource({"C+, nothing", "C<, nothing", "C>, nothing", "C#, 0"})
  void none(String policy, String result) {
    SmallProtocol.numbers(policy, "> 70|5").assertNumber(WIDE, result);
    SmallProtocol.numbers(policy, "> 70|5", "default|-|9").assertNumber(WIDE, "9");
    String open = policy.equals("C#") ? "1, 9" : "5, 9";
    SmallProtocol.numbers(policy, "> 70|5", "default|-|9").assertNumber(Map.of(), open);
  }

  @ParameterizedTest(name = "{0}")
  @DisplayName("A row that gives nothing makes a sum, a smallest and a largest nothing")
  @CsvSource({"C+, nothing", "C<, nothing", "C>, nothing", "C#, 2"})
  void nothingAmong(String policy, String result) {
    SmallProtocol.numbers(policy, "-|5", "-|null").assertNumber(WIDE, result);
    SmallProtocol.numbers(policy, "-|null", "-|5").assertNumber(WIDE, result);
  }

  @Test
  @DisplayName("A list whose rows are certain but whose results are open is not certain")
  void openList() {
    SmallProtocol protocol = SmallProtocol.numbers("C", "-|width + 1");
    assertThat(protocol.decision("Load", Map.of()).isCertain()).isFalse();
    assertThat(protocol.decision("Load", Map.of("width", 4)).isCertain()).isTrue();
    assertThat(protocol.on(Map.of()).missing())
        .filteredOn(missing -> missing.datum().field().name().equals("width"))
        .singleElement()
        .satisfies(missing -> assertThat(missing.mayChange()).containsExactly("Load"));
  }

  @Test
  @DisplayName("A datum that only the default row reads may matter, and does not when rows match")
  void defaultReads() {
    SmallProtocol protocol = SmallProtocol.numbers("U", "> 70|5", "default|-|width * 2");
    assertThat(protocol.on(Map.of("grade", "low")).missing())
        .filteredOn(MissingDatum::mayMatter)
        .extracting(missing -> missing.datum().field().name())
        .containsExactly("width");
  }

  @ParameterizedTest(name = "{0}")
  @DisplayName("A list's default entry that hangs on open data is not certain, and its data matter")
  @CsvSource({"C", "R"})
  void openDefault(String policy) {
    SmallProtocol protocol = SmallProtocol.numbers(policy, "[200..300]|1", "default|-|width + 1");
    DecisionResult open = protocol.decision("Load", Map.of());
    assertThat(open.byDefault()).isTrue();
    assertThat(open.isCertain()).isFalse();
    assertThat(protocol.on(Map.of()).missing())
        .filteredOn(missing -> missing.datum().field().name().equals("width"))
        .allSatisfy(missing -> assertThat(missing.mayChange()).contains("Load"));
    DecisionResult known = protocol.decision("Load", WIDE);
    assertThat(known.isCertain()).isTrue();
    assertThat(known.defaultResults()).singleElement().hasToString("61");
  }
}
