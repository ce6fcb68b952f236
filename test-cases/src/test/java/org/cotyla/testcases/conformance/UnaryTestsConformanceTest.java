package org.cotyla.testcases.conformance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.cotyla.expression.CellParser;
import org.cotyla.expression.CellTest;
import org.cotyla.expression.Dialect;
import org.cotyla.expression.Expression;
import org.cotyla.expression.ExpressionException;
import org.cotyla.expression.PreparedTest;
import org.cotyla.expression.Scope;
import org.cotyla.expression.StandardFunctions;
import org.cotyla.expression.Symbol;
import org.cotyla.expression.Vocabulary;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Cells of decision tables, against the cells of the DMN TCK")
class UnaryTestsConformanceTest {

  /** Types that the engine does not have, and how many lines each has. */
  private static final Map<String, Integer> OUT_OF_SCOPE =
      Map.of(
          "time", 36,
          "date and time", 36,
          "days and time duration", 38,
          "years and months duration", 35,
          "list", 7,
          "any", 1);

  private static final int IN_SCOPE = 532;

  private final TckData data = TckData.find();

  @BeforeEach
  void theDataIsThere() {
    data.assumeThere();
  }

  @Test
  @DisplayName("every undisputed cell of numbers, strings, booleans and dates answers as expected")
  void everyCellAnswers() {
    List<String> wrong = new ArrayList<>();
    int tested = 0;
    for (UnaryLine line : lines()) {
      if (line.valueType().isPresent() && !line.disputed()) {
        tested++;
        String expected = line.matches() ? "match" : "no match";
        List<String> answers = answers(line);
        if (!answers.stream().allMatch(expected::equals)) {
          wrong.add(line.title() + ": " + answers + ", expected " + expected);
        }
      }
    }
    System.out.println(
        "Cells of the DMN TCK as expected: " + (tested - wrong.size()) + " / " + tested);
    assertThat(wrong).isEmpty();
    assertThat(tested).isGreaterThanOrEqualTo(IN_SCOPE);
  }

  @Test
  @DisplayName(
      "only cells of types that the engine does not have are left out, and they are counted")
  void onlyForeignTypesAreLeftOut() {
    Map<String, Integer> leftOut = new TreeMap<>();
    for (UnaryLine line : lines()) {
      if (line.valueType().isEmpty() && !line.disputed()) {
        leftOut.merge(line.type(), 1, Integer::sum);
      }
    }
    System.out.println("Cells of the DMN TCK out of scope, by type: " + leftOut);
    assertThat(leftOut).containsExactlyInAnyOrderEntriesOf(OUT_OF_SCOPE);
  }

  private List<UnaryLine> lines() {
    List<String> texts = data.unaryTests();
    List<UnaryLine> lines = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      lines.add(UnaryLine.read(texts.get(i), i + 1));
    }
    return lines;
  }

  /** What the cell says of the one value: evaluated as written, and as prepared for a column. */
  private static List<String> answers(UnaryLine line) {
    ValueType type = line.valueType().orElseThrow();
    Symbol input = new Symbol("input", 0, type, List.of());
    Map<Symbol, Value> constants = new LinkedHashMap<>();
    line.variables()
        .forEach(
            (name, value) ->
                constants.put(
                    new Symbol(name, constants.size() + 1, value.type(), List.of()), value));
    Scope scope = symbol -> PossibleValues.of(constants.get(symbol));
    Vocabulary vocabulary = new Vocabulary(constants.keySet(), StandardFunctions.all());
    try {
      CellTest test = new CellParser(vocabulary, Dialect.STRICT).test(line.cell(), input);
      PossibleValues given =
          line.value().map(PossibleValues::of).orElse(PossibleValues.nothing(type));
      Symbol named = new Symbol(input.name(), constants.size() + 1, type, List.of());
      Scope withInput = symbol -> symbol.equals(named) ? given : scope.valueOf(symbol);
      Expression asWritten = new Expression.Membership(new Expression.Reference(named), test);
      boolean matches = asWritten.evaluate(withInput).equals(PossibleValues.of(Value.of(true)));
      Truth prepared = PreparedTest.of(test, type, scope, constants.keySet()).truth(given, scope);
      return List.of(
          matches ? "match" : "no match",
          switch (prepared) {
            case TRUE -> "match";
            case FALSE -> "no match";
            case OPEN -> "prepared: open, though the input is one value";
          });
    } catch (ExpressionException unread) {
      return List.of("not read: " + unread.line());
    }
  }
}
