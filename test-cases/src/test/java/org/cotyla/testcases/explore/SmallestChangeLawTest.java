package org.cotyla.testcases.explore;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explore.ChangeSet;
import org.cotyla.explore.Goal;
import org.cotyla.explore.Move;
import org.cotyla.explore.SmallestChange;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.testcases.generated.RandomCases;
import org.cotyla.testcases.generated.RandomProtocol;
import org.cotyla.value.Truth;
import org.cotyla.value.Value;

/** Checked against changing findings one by one. Source: this project's own engine. */
@Label("The smallest change")
class SmallestChangeLawTest {

  private static final int CASES = 150;

  @Property(tries = 120, edgeCases = EdgeCasesMode.NONE)
  @Label("applied to the case does what it says, and changes just the findings that it names")
  void doesWhatItSays(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    for (SmallestChange change : changes(seed)) {
      for (ChangeSet way : change.sets()) {
        List<String> named = new ArrayList<>();
        way.moves().forEach(move -> named.add(move.before().field().name()));
        way.onceRecorded().forEach(move -> named.add(move.before().field().name()));
        assertThat(differing(change.advice(), way.after())).hasSameElementsAs(named);
        boolean contradiction = !way.after().faults().isEmpty();
        assertThat(change.goal().claim().truth(way.after()))
            .as("seed %s, %s", seed, change.goal().wanted())
            .isIn(contradiction ? List.of(Truth.TRUE, Truth.OPEN) : List.of(Truth.TRUE));
        assertThat(way.moves()).hasSizeLessThanOrEqualTo(change.atMost());
        way.moves().forEach(SmallestChangeLawTest::assertMoved);
      }
    }
  }

  private static void assertMoved(Move move) {
    assertThat(move.before().value().values().contains(move.to())).isFalse();
    assertThat(move.before().field().allowed().contains(move.to())).isTrue();
  }

  @Property(tries = 120, edgeCases = EdgeCasesMode.NONE)
  @Label("is not beaten by any that is found by trying")
  void nothingSmaller(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    Random random = new Random(seed);
    for (SmallestChange change : changes(seed)) {
      if (change.end() == SmallestChange.End.UNDECIDED) {
        continue;
      }
      int fewest =
          change.sets().isEmpty() ? change.atMost() + 1 : change.sets().get(0).moves().size();
      Engine engine = Engine.of(change.advice().protocol());
      for (int i = 0; i < CASES && fewest > 0; i++) {
        Recommendation other =
            engine.evaluate(
                Parts.with(
                    change.advice().findings(),
                    changed(change.advice(), random.nextInt(fewest), random)));
        assertThat(change.goal().claim().truth(other))
            .as("seed %s, %s with %s", seed, change.goal().wanted(), other.findings().data())
            .isNotEqualTo(Truth.TRUE);
      }
    }
  }

  /** All open data filled in, and so many known findings replaced. */
  private static Map<String, Value> changed(Recommendation advice, int number, Random random) {
    Map<String, Value> values = new HashMap<>();
    List<Datum> known = new ArrayList<>();
    for (Datum datum : advice.findings().data()) {
      if (datum.knowledge() == Knowledge.NOT_YET) {
        continue;
      }
      if (datum.value().single().isEmpty()) {
        values.put(datum.field().name(), Parts.pick(datum.field(), datum.value().values(), random));
      }
      if (datum.knowledge() != Knowledge.MISSING) {
        known.add(datum);
      }
    }
    java.util.Collections.shuffle(known, random);
    for (Datum datum : known.subList(0, Math.min(number, known.size()))) {
      Field field = datum.field();
      values.put(field.name(), Parts.pick(field, field.allowed(), random));
    }
    return values;
  }

  private static List<SmallestChange> changes(long seed) {
    Protocol protocol = RandomProtocol.of(seed);
    Engine engine = Engine.of(protocol);
    Recommendation advice =
        engine.evaluate(RandomCases.of(protocol, new Random(seed), (int) (seed % 4)));
    List<SmallestChange> changes = new ArrayList<>();
    for (Ranking ranking : protocol.rankings()) {
      for (Option option : ranking.options()) {
        changes.add(SmallestChange.of(engine, advice, new Goal.First(ranking, option.name()), 2));
      }
    }
    return changes;
  }

  private static List<String> differing(Recommendation one, Recommendation other) {
    return one.findings().data().stream()
        .filter(
            datum ->
                !other
                    .findings()
                    .datum(datum.field().name())
                    .orElseThrow()
                    .value()
                    .equals(datum.value()))
        .map(datum -> datum.field().name())
        .toList();
  }
}
