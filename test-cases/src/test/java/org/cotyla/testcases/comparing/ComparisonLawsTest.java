package org.cotyla.testcases.comparing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.cotyla.compare.DecisionComparison;
import org.cotyla.compare.ProtocolComparison;
import org.cotyla.compare.ProtocolComparison.Meaning;
import org.cotyla.compare.Region;
import org.cotyla.compare.Verdict;
import org.cotyla.draft.ProtocolDraft;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Case;
import org.cotyla.finite.Effort;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Protocol;
import org.cotyla.testcases.generated.RandomCases;
import org.cotyla.testcases.generated.RandomProtocol;
import org.cotyla.value.Truth;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Comparing a random protocol with an edited copy")
class ComparisonLawsTest {

  private static final int PROTOCOLS = 80;
  private static final int CASES = 300;
  private static final Effort EFFORT = new Effort(20_000, 150, 12);

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"reordered", "renamed", "restyled"})
  @DisplayName("says the same in meaning where only the writing differs, and needs no search")
  void writingOnly(String edit) {
    for (long seed = 0; seed < PROTOCOLS; seed++) {
      ProtocolDraft draft = RandomProtocol.sheets(seed).draft();
      Edited edited = new Edited(draft, seed);
      ProtocolDraft other =
          switch (edit) {
            case "reordered" -> edited.reordered();
            case "renamed" -> edited.renamed();
            default -> edited.restyled();
          };
      ProtocolComparison comparison = compare(draft, other).orElseThrow();
      assertThat(comparison.meaning()).as("seed %d", seed).isEqualTo(Meaning.SAME);
      assertThat(comparison.edited()).as("seed %d", seed).isEmpty();
    }
  }

  @Test
  @DisplayName("never finds a difference where a row was split in two, and proves that of tables")
  void split() {
    int splits = 0;
    int proven = 0;
    for (long seed = 0; seed < PROTOCOLS; seed++) {
      ProtocolDraft draft = RandomProtocol.sheets(seed).draft();
      Optional<ProtocolDraft> other = new Edited(draft, seed).split();
      if (other.isPresent()) {
        splits++;
        ProtocolComparison comparison = compare(draft, other.get()).orElseThrow();
        assertThat(comparison.meaning())
            .as("seed %d: %s", seed, words(comparison))
            .isNotEqualTo(Meaning.DIFFERENT);
        proven += comparison.meaning() == Meaning.SAME ? 1 : 0;
        boolean arithmetic =
            comparison.decisions().stream()
                .filter(decision -> !decision.verdict().isSame())
                .allMatch(decision -> decision.note().isPresent());
        assertThat(arithmetic).as("seed %d says why it is undecided", seed).isTrue();
      }
    }
    assertThat(splits).isGreaterThan(10);
    assertThat(proven).isGreaterThanOrEqualTo(splits * 2 / 5);
  }

  @Test
  @DisplayName("gives only cases on which the two engines differ, in regions that bear them out")
  void witnesses() {
    int regions = 0;
    for (long seed = 0; seed < PROTOCOLS; seed++) {
      for (DecisionComparison decision : changed(seed).map(Pair::decisions).orElse(List.of())) {
        for (Region region : decision.regions()) {
          List<Recommendation> answers = region.example().answers();
          assertThat(region.difference().claim().truth(answers))
              .as("seed %d, %s: %s", seed, decision.name(), region.sentence())
              .isEqualTo(Truth.TRUE);
          regions++;
        }
      }
    }
    assertThat(regions).isGreaterThan(40);
  }

  @Test
  @DisplayName("says the same only of decisions that agree on every one of many random cases")
  void proofsHold() {
    int same = 0;
    int differing = 0;
    for (long seed = 0; seed < PROTOCOLS; seed++) {
      Optional<Pair> changed = changed(seed);
      if (changed.isEmpty()) {
        continue;
      }
      Pair pair = changed.get();
      Random random = new Random(seed);
      for (int i = 0; i < CASES; i++) {
        Case given = RandomCases.of(pair.old().protocol(), random, 0);
        Recommendation was = pair.old().evaluate(given);
        Recommendation is = pair.young().evaluate(given);
        if (!was.faults().isEmpty() || !is.faults().isEmpty()) {
          continue;
        }
        for (DecisionComparison decision : pair.decisions()) {
          boolean differs = differs(was, is, decision);
          differing += differs ? 1 : 0;
          if (decision.verdict().isSame()) {
            same++;
            assertThat(differs)
                .as("seed %d: %s is %s", seed, decision.name(), decision.verdict())
                .isFalse();
          }
        }
        for (RankingResult ranking : is.rankings()) {
          boolean first =
              !ranking.first().equals(was.ranking(ranking.ranking().name()).orElseThrow().first());
          if (first) {
            assertThat(pair.comparison().rankings())
                .filteredOn(one -> one.name().equals(ranking.ranking().name()))
                .noneMatch(one -> one.first().isSame());
          }
        }
      }
    }
    assertThat(same).isGreaterThan(1000);
    assertThat(differing).isGreaterThan(300);
  }

  private record Pair(Engine old, Engine young, ProtocolComparison comparison) {
    List<DecisionComparison> decisions() {
      return comparison.decisions().stream()
          .filter(decision -> decision.verdict() != Verdict.ADDED)
          .toList();
    }
  }

  private static Optional<Pair> changed(long seed) {
    ProtocolDraft draft = RandomProtocol.sheets(seed).draft();
    Optional<Protocol> old = Edited.compile(draft);
    Optional<Protocol> young = Edited.compile(new Edited(draft, seed).changed());
    if (old.isEmpty() || young.isEmpty()) {
      return Optional.empty();
    }
    Engine before = Engine.of(old.get());
    Engine after = Engine.of(young.get());
    return Optional.of(new Pair(before, after, ProtocolComparison.of(before, after, EFFORT)));
  }

  /** By values, and for lists by the set of entries; votes show in the rankings. */
  private static boolean differs(
      Recommendation was, Recommendation is, DecisionComparison decision) {
    DecisionTable before = decision.before().orElseThrow();
    DecisionTable after = decision.after().orElseThrow();
    if (after.votes()) {
      return false;
    }
    DecisionResult one = was.decision(before.name()).orElseThrow();
    DecisionResult other = is.decision(after.name()).orElseThrow();
    boolean list = after.hitPolicy().isList();
    return list ? !entries(one).equals(entries(other)) : !one.outputs().equals(other.outputs());
  }

  private static java.util.Set<Object> entries(DecisionResult result) {
    java.util.Set<Object> entries = new java.util.HashSet<>();
    result.counting().forEach(firing -> entries.add(firing.results()));
    return entries;
  }

  private static Optional<ProtocolComparison> compare(ProtocolDraft draft, ProtocolDraft other) {
    Optional<Protocol> old = Edited.compile(draft);
    Optional<Protocol> young = Edited.compile(other);
    return old.flatMap(
        was -> young.map(is -> ProtocolComparison.of(Engine.of(was), Engine.of(is), EFFORT)));
  }

  private static String words(ProtocolComparison comparison) {
    StringBuilder words = new StringBuilder();
    comparison
        .edited()
        .forEach(
            decision -> {
              words.append(decision.name()).append(' ').append(decision.verdict()).append('\n');
              decision.regions().forEach(region -> words.append(region.sentence()).append('\n'));
            });
    return words.toString();
  }
}
