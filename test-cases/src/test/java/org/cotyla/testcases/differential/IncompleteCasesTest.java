package org.cotyla.testcases.differential;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.MissingDatum;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Case;
import org.cotyla.finding.Given;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.testcases.differential.PlainInterpreter.Decided;
import org.cotyla.testcases.differential.PlainInterpreter.World;
import org.cotyla.testcases.generated.RandomCases;
import org.cotyla.testcases.generated.RandomProtocol;
import org.cotyla.value.Value;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The law of possible values, held against every way to fill in what is missing. */
class IncompleteCasesTest {

  private static final int PROTOCOLS = 300;
  private static final int CASES = 6;
  private static final int COMPLETIONS = 400;

  /** One way to fill in the open data, and what it comes to. */
  private record Completion(Map<Symbol, Object> data, List<World> worlds) {}

  @Test
  @DisplayName(
      "Incomplete cases: what any completion gives was possible, and no datum matters that was said"
          + " not to")
  void incompleteCases() {
    Exactness exactness = new Exactness();
    for (long seed = 0; seed < PROTOCOLS; seed++) {
      Protocol protocol = RandomProtocol.of(seed);
      Engine engine = Engine.of(protocol);
      Random random = new Random(seed);
      for (int i = 0; i < CASES; i++) {
        check(seed, engine, RandomCases.of(protocol, random, 1 + random.nextInt(6)), exactness);
      }
    }
    exactness.print();
    assertThat(exactness.share()).as(exactness::toString).isGreaterThan(0.7);
  }

  private static void check(long seed, Engine engine, Case given, Exactness exactness) {
    Recommendation advice = engine.evaluate(given);
    List<Completion> completions = new ArrayList<>();
    Agreement agreement = new Agreement(() -> "protocol " + seed + ", " + given);
    PlainData.completions(advice, IncompleteCasesTest::representatives, COMPLETIONS)
        .forEach(
            data -> {
              List<World> worlds = PlainInterpreter.run(engine.protocol(), data);
              completions.add(new Completion(data, worlds));
              worlds.forEach(world -> agreement.inside(advice, world));
            });
    List<World> worlds = completions.stream().flatMap(c -> c.worlds().stream()).toList();
    for (DecisionResult result : advice.decisions()) {
      if (result.isCertain()) {
        assertThat(outcomes(worlds, result))
            .as(() -> result.table().name() + " is certain; protocol " + seed + ", " + given)
            .hasSize(1);
      }
    }
    for (MissingDatum missing : advice.missing()) {
      assertItMattersOnlyWhereSaid(advice, missing, completions, "protocol " + seed + ", " + given);
    }
    exactness.count(advice, worlds);
  }

  private static List<Value> representatives(Field field) {
    List<Value> values = new ArrayList<>();
    for (Given given : RandomCases.representatives(field)) {
      if (given instanceof Given.Amount amount) {
        values.add(Value.of(amount.number()));
      } else if (given instanceof Given.Word word) {
        values.add(Value.of(word.text()));
      } else if (given instanceof Given.YesNo answer) {
        values.add(Value.of(answer.yes()));
      } else if (given instanceof Given.Day day) {
        values.add(Value.of(day.date()));
      }
    }
    return values;
  }

  /** Completions that differ only in this datum must agree on all that it is said not to change. */
  private static void assertItMattersOnlyWhereSaid(
      Recommendation advice, MissingDatum missing, List<Completion> completions, String where) {
    Map<Map<Symbol, Object>, List<World>> alike = new HashMap<>();
    for (Completion completion : completions) {
      Map<Symbol, Object> rest = new HashMap<>(completion.data());
      rest.remove(missing.datum().field().symbol());
      alike.computeIfAbsent(rest, key -> new ArrayList<>()).addAll(completion.worlds());
    }
    for (List<World> worlds : alike.values()) {
      for (RankingResult ranking : advice.rankings()) {
        String name = ranking.ranking().name();
        if (!missing.mayChangeFirst().contains(name)) {
          assertThat(worlds.stream().map(w -> "" + w.rankings().get(name).first()).distinct())
              .as(() -> missing.datum().field().name() + " -> first " + name + "; " + where)
              .hasSizeLessThanOrEqualTo(faultless(worlds) ? 1 : Integer.MAX_VALUE);
        }
      }
      for (DecisionResult result : advice.decisions()) {
        String name = result.table().name();
        if (!result.table().votes() && !missing.mayChange().contains(name) && faultless(worlds)) {
          assertThat(outcomes(worlds, result))
              .as(() -> missing.datum().field().name() + " -> " + name + "; " + where)
              .hasSize(1);
        }
      }
    }
  }

  private static boolean faultless(List<World> worlds) {
    return worlds.stream()
        .noneMatch(w -> w.decisions().values().stream().anyMatch(Decided::isFault));
  }

  /**
   * The different results of a decision: its outputs, or for a list its rows and what they give.
   */
  private static Set<String> outcomes(List<World> worlds, DecisionResult result) {
    Set<String> outcomes = new HashSet<>();
    for (World world : worlds) {
      Decided decided = world.decisions().get(result.table().name());
      outcomes.add(
          result.table().votes() || result.table().hitPolicy().isList()
              ? Agreement.ids(decided.counting()) + " " + decided.listed()
              : Exactness.text(decided.outputs()));
    }
    return outcomes;
  }
}
