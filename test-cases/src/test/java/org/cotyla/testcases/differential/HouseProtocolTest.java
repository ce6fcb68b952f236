package org.cotyla.testcases.differential;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Expression;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Case;
import org.cotyla.finding.Given;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.testcases.differential.PlainInterpreter.World;
import org.cotyla.testcases.house.House;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The house protocol run both ways, on cases that lie on and around its thresholds. */
class HouseProtocolTest {

  private static final int CASES = 2000;
  private static final int COMPLETIONS = 1;

  private final Engine engine = House.engine();
  private final Protocol protocol = engine.protocol();
  private final Map<Field, List<Value>> values = new HashMap<>();

  HouseProtocolTest() {
    List<Value> numbers = new ArrayList<>();
    protocol.calculations().forEach(c -> numbers.addAll(c.constant().stream().toList()));
    protocol
        .allRows()
        .flatMap(row -> row.tests().stream())
        .flatMap(test -> test.prepared().test().parts().stream())
        .flatMap(HouseProtocolTest::literals)
        .forEach(numbers::add);
    protocol.givenFields().forEach(field -> values.put(field, values(field, numbers)));
  }

  private static Stream<Value> literals(Expression formula) {
    Stream<Value> here =
        formula instanceof Expression.Literal literal ? Stream.of(literal.value()) : Stream.of();
    return Stream.concat(here, formula.parts().stream().flatMap(HouseProtocolTest::literals));
  }

  /** All values of a choice; for a number its ends, every threshold, and what lies beside them. */
  private static List<Value> values(Field field, List<Value> numbers) {
    if (field.allowed().isFinite()) {
      return field.allowed().values();
    }
    TreeSet<Value> around = new TreeSet<>();
    for (Value value : numbers) {
      if (value instanceof Value.NumberValue number) {
        for (String step : List.of("-1", "0", "0.5", "1")) {
          around.add(Value.of(number.number().add(new BigDecimal(step))));
        }
      }
    }
    around.add(field.allowed().hull().low());
    around.add(field.allowed().hull().high());
    return around.stream().filter(field.allowed()::contains).toList();
  }

  private Case randomCase(Random random, int open) {
    int stage = random.nextInt(protocol.about().stages().size());
    Map<String, Object> findings = new LinkedHashMap<>();
    for (Field field : protocol.givenFields()) {
      if (field.stage() <= stage && random.nextInt(10) >= open) {
        findings.put(field.name(), given(any(values.get(field), random)));
      }
    }
    return Case.of(findings).atStage(protocol.about().stages().get(stage));
  }

  private static <T> T any(List<T> list, Random random) {
    return list.get(random.nextInt(list.size()));
  }

  private static Given given(Value value) {
    return value instanceof Value.NumberValue number
        ? Given.of(number.number())
        : Given.of(value.plain());
  }

  @Test
  @DisplayName(
      "Every field of the house protocol is a number, a choice or a yes/no with values to try")
  void everyFieldHasValues() {
    assertThat(values.keySet())
        .allMatch(field -> field.symbol().type() != ValueType.TEXT || field.symbol().isChoice());
    assertThat(values.values()).allMatch(list -> list.size() >= 2);
  }

  @Test
  @DisplayName(
      "2,000 house cases, complete and with data missing, agree with the plain interpreter")
  void houseCases() {
    Random random = new Random(20260101);
    for (int i = 0; i < CASES; i++) {
      int number = i;
      Case given = randomCase(random, i % 4 == 0 ? 0 : random.nextInt(8));
      Recommendation advice = engine.evaluate(given);
      Agreement agreement = new Agreement(() -> "house case " + number + ": " + given);
      boolean complete = PlainData.isComplete(advice);
      for (int k = 0; k < (complete ? 1 : COMPLETIONS); k++) {
        Map<Symbol, Object> data = completion(advice, random);
        List<World> worlds = PlainInterpreter.run(protocol, data);
        if (complete && worlds.size() == 1) {
          agreement.same(advice, worlds.get(0));
        } else {
          worlds.forEach(world -> agreement.inside(advice, world));
        }
      }
    }
  }

  private Map<Symbol, Object> completion(Recommendation advice, Random random) {
    return PlainData.completions(advice, field -> List.of(any(values.get(field), random)), 1)
        .get(0);
  }
}
