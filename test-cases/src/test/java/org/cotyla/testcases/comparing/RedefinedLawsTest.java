package org.cotyla.testcases.comparing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.cotyla.compare.DecisionComparison;
import org.cotyla.compare.PastCase;
import org.cotyla.compare.ProtocolComparison;
import org.cotyla.compare.RankingComparison;
import org.cotyla.draft.ProtocolDraft;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Case;
import org.cotyla.finding.FindingsReader;
import org.cotyla.finding.Given;
import org.cotyla.finite.Effort;
import org.cotyla.issue.RejectedException;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Protocol;
import org.cotyla.testcases.generated.RandomCases;
import org.cotyla.testcases.generated.RandomProtocol;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("Comparing a random protocol with one whose definitions were edited")
class RedefinedLawsTest {

  private static final int PROTOCOLS = 60;
  private static final int CASES = 80;
  private static final int PAST_CASES = 40;
  private static final Effort EFFORT = new Effort(5_000, 60, 8);

  /** Engines of a random protocol and of the same after an edit. */
  private record Pair(long seed, Engine before, Engine after) {}

  private static List<Pair> pairs(Redefined.Sort sort) {
    List<Pair> pairs = new ArrayList<>();
    for (long seed = 0; seed < PROTOCOLS; seed++) {
      ProtocolDraft draft = RandomProtocol.sheets(seed).draft();
      Optional<Protocol> old = Edited.compile(draft);
      Optional<Protocol> young = new Redefined(draft, seed).with(sort).flatMap(Edited::compile);
      if (old.isPresent() && young.isPresent()) {
        pairs.add(new Pair(seed, Engine.of(old.get()), Engine.of(young.get())));
      }
    }
    return pairs;
  }

  @ParameterizedTest(name = "{0}")
  @EnumSource
  @DisplayName("says the same only of what agrees on every one of many cases that both take")
  void proofsHold(Redefined.Sort sort) {
    List<Pair> pairs = pairs(sort);
    int same = 0;
    for (Pair pair : pairs) {
      same += check(pair.before(), pair.after(), sort + " " + pair.seed(), new Random(pair.seed()));
    }
    assertThat(pairs).hasSizeGreaterThan(4);
    assertThat(same).isGreaterThan(100);
  }

  @ParameterizedTest(name = "{0}")
  @EnumSource
  @DisplayName("finds in past cases what the two whole answers to each of them differ in")
  void pastCases(Redefined.Sort sort) {
    List<Pair> pairs = pairs(sort);
    int changed = 0;
    for (Pair pair : pairs) {
      List<PastCase> cases = pastCases(pair.before(), pair.after(), new Random(pair.seed()));
      String words = sort + " " + pair.seed();
      changed += PastCasesAgreement.check(pair.before(), pair.after(), cases, words);
    }
    assertThat(pairs).hasSizeGreaterThan(4);
    assertThat(changed).isPositive();
  }

  /** Cases as either protocol takes them, half of them with much left out. */
  private static List<PastCase> pastCases(Engine before, Engine after, Random random) {
    List<PastCase> past = new ArrayList<>();
    for (int i = 0; i < PAST_CASES; i++) {
      Case whole = cases(before, after, random).get(i % 2);
      List<Case.Finding> findings = new ArrayList<>(whole.findings());
      if (random.nextBoolean()) {
        findings.removeIf(finding -> random.nextInt(3) == 0);
      }
      Case given = new Case(whole.title(), whole.stage(), findings, whole.stagePlace());
      past.add(PastCase.of("case " + i, given));
    }
    return past;
  }

  /** How many verdicts of sameness were held against a case. */
  private static int check(Engine before, Engine after, String words, Random random) {
    ProtocolComparison comparison = ProtocolComparison.of(before, after, EFFORT);
    int same = 0;
    for (int i = 0; i < CASES; i++) {
      List<Case> cases = cases(before, after, random);
      Recommendation was = before.decide(cases.get(0));
      Recommendation is = after.decide(cases.get(1));
      if (!was.faults().isEmpty() || !is.faults().isEmpty()) {
        continue;
      }
      for (DecisionComparison decision : comparison.decisions()) {
        if (decision.verdict().isSame()) {
          assertThat(given(is, decision.after().orElseThrow()))
              .as("%s: %s is %s", words, decision.name(), decision.verdict())
              .isEqualTo(given(was, decision.before().orElseThrow()));
          same++;
        }
      }
      for (RankingComparison ranking : comparison.rankings()) {
        same += check(was, is, ranking, words);
      }
    }
    return same;
  }

  private static int check(
      Recommendation was, Recommendation is, RankingComparison ranking, String words) {
    Optional<RankingResult> before = was.ranking(ranking.name());
    RankingResult after = is.ranking(ranking.name()).orElseThrow();
    if (ranking.first().isSame()) {
      assertThat(after.first())
          .as("%s: first %s is %s", words, ranking.name(), ranking.first())
          .isEqualTo(before.orElseThrow().first());
    }
    if (ranking.verdict().isSame()) {
      assertThat(weighed(after))
          .as("%s: %s is %s", words, ranking.name(), ranking.verdict())
          .isEqualTo(weighed(before.orElseThrow()));
    }
    return ranking.first().isSame() ? 1 : 0;
  }

  private static Map<String, String> weighed(RankingResult result) {
    Map<String, String> weighed = new LinkedHashMap<>();
    for (RankedOption option : result.options()) {
      String points = option.points().now().stripTrailingZeros().toPlainString();
      weighed.put(option.name(), option.availability() + " " + points);
    }
    return weighed;
  }

  /** What the decision gives: its values, or what it lists; votes show in the rankings. */
  private static Object given(Recommendation answer, DecisionTable table) {
    if (table.votes()) {
      return "votes";
    }
    DecisionResult result = answer.decision(table.name()).orElseThrow();
    if (!table.hitPolicy().isList()) {
      return result.outputs();
    }
    Set<Object> entries = new LinkedHashSet<>();
    result.counting().forEach(firing -> entries.add(firing.results()));
    if (result.byDefault()) {
      entries.add(result.defaultResults());
    }
    return table.hitPolicy() == HitPolicy.COLLECT ? entries : new ArrayList<>(entries);
  }

  /** A case for each protocol, which agree in all that both can be told. */
  private static List<Case> cases(Engine before, Engine after, Random random) {
    List<Engine> engines = List.of(before, after);
    int stage = random.nextInt(2);
    List<Map<String, Object>> stated = List.of(new LinkedHashMap<>(), new LinkedHashMap<>());
    for (int side = 0; side < 2; side++) {
      for (Field field : engines.get(side).protocol().givenFields()) {
        int other = 1 - side;
        boolean shared =
            engines.get(other).protocol().givenFields().stream()
                .anyMatch(one -> one.name().equals(field.name()));
        if (field.stage() > stage || stated.get(side).containsKey(field.name())) {
          continue;
        }
        List<Given> values = new ArrayList<>(RandomCases.representatives(field));
        for (Engine engine : shared ? engines : List.of(engines.get(side))) {
          values.removeIf(value -> !takes(engine, field, value, stage));
        }
        if (!values.isEmpty()) {
          Given value = values.get(random.nextInt(values.size()));
          stated.get(side).put(field.name(), value);
          if (shared) {
            stated.get(other).put(field.name(), value);
          }
        }
      }
    }
    List<Case> cases = new ArrayList<>();
    for (int side = 0; side < 2; side++) {
      String name = engines.get(side).protocol().about().stages().get(stage);
      cases.add(Case.of(stated.get(side)).atStage(name));
    }
    return cases;
  }

  private static boolean takes(Engine engine, Field field, Given value, int stage) {
    String name = engine.protocol().about().stages().get(stage);
    Case alone = Case.of(Map.of(field.name(), value)).atStage(name);
    try {
      new FindingsReader(engine.protocol()).read(alone);
      return true;
    } catch (RejectedException refused) {
      return false;
    }
  }
}
