package org.cotyla.testcases.traps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.expression.StandardFunctions;
import org.cotyla.finding.Case;
import org.cotyla.json.RecommendationJson;
import org.cotyla.testcases.generated.Sheets;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.ValueType;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The known traps of the rule engine underneath, each of which once gave a wrong answer silently.
 */
class RuleEngineTrapsTest {

  private static Sheets sheets() {
    return new Sheets()
        .field("width", "number", "[0..100]")
        .field("depth", "number", "[0..100]")
        .derived("load", "number", "-")
        .derived("strain", "number", "-");
  }

  private static List<String> fired(Recommendation advice, String decision) {
    DecisionResult result = advice.decision(decision).orElseThrow();
    return result.firings().stream().map(firing -> firing.row().id()).toList();
  }

  private static Case of(int width, int depth) {
    return Case.of(Map.of("width", width, "depth", depth));
  }

  @ParameterizedTest(name = "{0} rows")
  @DisplayName("Equality in few and many rows of a column fires exactly the row that it meets")
  @ValueSource(ints = {1, 2, 3, 4, 5, 8, 9, 10, 12, 20})
  void equalityRows(int count) {
    String[] rows = new String[count];
    for (int i = 0; i < count; i++) {
      rows[i] = "E-" + i + "|" + i + "|1";
    }
    Engine engine =
        Engine.of(
            sheets()
                .decision("D", "C+", "-", "width", "load", rows)
                .decision("E", "C", "-", "width", "strain", "X|-|1")
                .protocol());
    for (int value = 0; value <= count; value++) {
      List<String> expected = value < count ? List.of("E-" + value) : List.of();
      assertThat(fired(engine.evaluate(of(value, 0)), "D")).isEqualTo(expected);
    }
  }

  @ParameterizedTest(name = "{0} rows")
  @DisplayName("Ranges in few and many rows of a column fire exactly the rows that they meet")
  @ValueSource(ints = {1, 2, 3, 4, 8, 9, 10, 12, 20})
  void rangeRows(int count) {
    List<String> rows = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      rows.add("A-" + i + "|>= " + i + "|1");
      rows.add("B-" + i + "|< " + i + "|1");
      rows.add("C-" + i + "|[" + i + ".." + (i + 1) + ")|1");
    }
    Engine engine =
        Engine.of(
            sheets()
                .decision("D", "C+", "-", "width", "load", rows.toArray(String[]::new))
                .decision("E", "C", "-", "width", "strain", "X|-|1")
                .protocol());
    for (int value = 0; value <= count; value++) {
      List<String> expected = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        if (value >= i) {
          expected.add("A-" + i);
        } else {
          expected.add("B-" + i);
        }
        if (value == i) {
          expected.add("C-" + i);
        }
      }
      assertThat(fired(engine.evaluate(of(value, 0)), "D")).isEqualTo(expected);
    }
  }

  @Test
  @DisplayName("Equal conditions in many rows all fire, in the order of the sheet")
  void equalConditions() {
    String[] rows = new String[30];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = "R-" + i + "|> 5|" + (i % 2 == 0 ? "-" : "> 5") + "|1";
    }
    Engine engine =
        Engine.of(
            sheets()
                .decision("D", "C+", "-", "width|depth", "load", rows)
                .decision("E", "C", "-", "width", "strain", "X|-|1")
                .protocol());
    assertThat(fired(engine.evaluate(of(6, 6)), "D")).hasSize(30).startsWith("R-0", "R-1", "R-2");
    assertThat(fired(engine.evaluate(of(6, 5)), "D")).hasSize(15).startsWith("R-0", "R-2");
    assertThat(fired(engine.evaluate(of(5, 6)), "D")).isEmpty();
  }

  @Test
  @DisplayName("The same test under two columns is two tests")
  void sameTestTwoColumns() {
    Engine engine =
        Engine.of(
            sheets()
                .decision("D", "C+", "-", "width|depth", "load", "R-1|> 5|-|1", "R-2|-|> 5|1")
                .decision("E", "C", "-", "depth|width", "strain", "S-1|> 5|-|1", "S-2|-|> 5|1")
                .protocol());
    Recommendation advice = engine.evaluate(of(9, 1));
    assertThat(fired(advice, "D")).containsExactly("R-1");
    assertThat(fired(advice, "E")).containsExactly("S-2");
  }

  @Test
  @DisplayName(
      "Two columns of one field, and tests that read alike but mean two things, stay apart")
  void twoColumnsOfOneField() {
    Engine engine =
        Engine.of(
            sheets()
                .field("note", "text", "-")
                .field("mark", "text", "-")
                .decision("D", "C+", "-", "width|width", "load", "R-1|> 5|< 8|1", "R-2|> 5|> 8|1")
                .decision("E", "C", "-", "note", "strain", "S-1|\"mark\"|1", "S-2|mark|1")
                .protocol());
    Recommendation advice =
        engine.evaluate(Case.of(Map.of("width", 7, "note", "mark", "mark", "other")));
    assertThat(fired(advice, "D")).containsExactly("R-1");
    assertThat(fired(advice, "E")).containsExactly("S-1");
  }

  @Test
  @DisplayName("The same row texts in two tables fire in both, and each table has its own result")
  void sameTextsInTwoTables() {
    Engine engine =
        Engine.of(
            sheets()
                .decision("D", "C+", "-", "width", "load", "R-1|> 5|1", "R-2|> 5|1")
                .decision("E", "C+", "-", "width", "strain", "R-3|> 5|1", "R-4|> 5|1")
                .protocol());
    Recommendation advice = engine.evaluate(of(6, 0));
    assertThat(fired(advice, "D")).containsExactly("R-1", "R-2");
    assertThat(fired(advice, "E")).containsExactly("R-3", "R-4");
    assertThat(advice.value("load").orElseThrow().plain()).isEqualTo("2");
  }

  @Test
  @DisplayName("Arithmetic without result inside a test is no match, whichever way it is asked")
  void divisionByZero() {
    Engine engine =
        Engine.of(
            sheets()
                .decision(
                    "D",
                    "C+",
                    "-",
                    "width",
                    "load",
                    "R-1|> 1 / depth|1",
                    "R-2|not(> 1 / depth)|1",
                    "R-3|[1 / depth..200]|1",
                    "R-4|<= 1 / depth|1")
                .decision("E", "C", "-", "width", "strain", "X|-|1")
                .protocol());
    assertThat(fired(engine.evaluate(of(6, 0)), "D")).isEmpty();
    assertThat(fired(engine.evaluate(of(6, 1)), "D")).containsExactly("R-1", "R-3");
  }

  /** A function that fails whenever it is told to. */
  private record Failing(AtomicBoolean fails) implements FormulaFunction {
    @Override
    public String name() {
      return "trouble";
    }

    @Override
    public List<ValueType> parameters() {
      return List.of(ValueType.NUMBER);
    }

    @Override
    public ValueType result() {
      return ValueType.NUMBER;
    }

    @Override
    public PossibleValues apply(List<PossibleValues> arguments) {
      if (fails.get()) {
        throw new IllegalStateException("no result today");
      }
      return arguments.get(0);
    }
  }

  @Test
  @DisplayName("A function that throws inside a test surfaces as it is, and the next case is sound")
  void failingFunction() {
    AtomicBoolean fails = new AtomicBoolean(true);
    List<FormulaFunction> functions = new ArrayList<>(StandardFunctions.all());
    functions.add(new Failing(fails));
    Engine engine =
        Engine.of(
            sheets()
                .decision("D", "C+", "-", "width", "load", "R-1|> trouble(depth)|1", "R-2|> 5|1")
                .decision("E", "C", "-", "width", "strain", "X|-|1")
                .protocol(functions));
    assertThatThrownBy(() -> engine.evaluate(of(6, 1)))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("no result today")
        .satisfies(thrown -> assertThat(thrown.getClass().getName()).startsWith("java.lang"));
    fails.set(false);
    assertThat(fired(engine.evaluate(of(6, 1)), "D")).containsExactly("R-1", "R-2");
  }

  @Test
  @DisplayName("The order in which rows are loaded changes no result, only the order of the list")
  void rowOrder() {
    List<String> rows =
        new ArrayList<>(List.of("R-1|> 5|1", "R-2|> 4|2", "R-3|-|4", "R-4|< 3|8", "R-5|6|16"));
    List<BigDecimal> sums = new ArrayList<>();
    for (int turn = 0; turn < rows.size(); turn++) {
      rows.add(rows.remove(0));
      Engine engine =
          Engine.of(
              sheets()
                  .decision("D", "C+", "-", "width", "load", rows.toArray(String[]::new))
                  .decision("E", "C", "-", "width", "strain", "X|-|1")
                  .protocol());
      Recommendation advice = engine.evaluate(of(6, 0));
      assertThat(fired(advice, "D"))
          .isEqualTo(
              rows.stream()
                  .map(row -> row.substring(0, 3))
                  .filter(id -> !id.equals("R-4"))
                  .toList());
      sums.add(new BigDecimal(advice.value("load").orElseThrow().plain()));
    }
    assertThat(sums).containsOnly(new BigDecimal("23"));
  }

  @Test
  @DisplayName("Eight threads at once get the answers that one thread gets")
  void threads() throws Exception {
    Engine engine =
        Engine.of(
            sheets()
                .decision(
                    "D", "C+", "-", "width", "load", "R-1|> 50|1", "R-2|<= depth|2", "R-3|-|4")
                .decision("E", "F", "-", "load", "strain", "S-1|> 4|1", "S-2|-|2")
                .protocol());
    List<Case> cases = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      cases.add(i % 3 == 0 ? Case.of(Map.of("width", i)) : of(2 * i, 100 - 3 * (i / 2)));
    }
    List<String> alone = answers(engine, cases);
    ExecutorService threads = Executors.newFixedThreadPool(8);
    try {
      List<Future<List<String>>> answers = new ArrayList<>();
      for (int i = 0; i < 24; i++) {
        answers.add(threads.submit(() -> answers(engine, cases)));
      }
      for (Future<List<String>> answer : answers) {
        assertThat(answer.get()).isEqualTo(alone);
      }
    } finally {
      threads.shutdown();
    }
  }

  private static List<String> answers(Engine engine, List<Case> cases) {
    return cases.stream().map(given -> RecommendationJson.write(engine.evaluate(given))).toList();
  }
}
