package org.cotyla.testcases.explore;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explore.Facet;
import org.cotyla.explore.Margin;
import org.cotyla.explore.Margins;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.ShownAs;
import org.cotyla.testcases.generated.RandomCases;
import org.cotyla.testcases.generated.RandomProtocol;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;

/** Checked against running values one by one. Source: this project's own engine. */
@Label("The lines near a recorded number")
class MarginsLawTest {

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  @Label("are where the answer changes, and it does not change on the way there")
  void nearest(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    Protocol protocol = RandomProtocol.of(seed);
    Engine engine = Engine.of(protocol);
    Recommendation advice =
        engine.evaluate(RandomCases.of(protocol, new Random(seed), (int) (seed % 3)));
    Margins margins = Margins.of(engine, advice);
    for (Margin margin : margins.margins()) {
      Stream.concat(margin.below().stream(), margin.above().stream())
          .forEach(
              line -> {
                Recommendation there = at(engine, advice, margin.datum(), line.value());
                assertThat(line.changes())
                    .allSatisfy(
                        change ->
                            assertThat(Parts.of(there, change.facet()))
                                .as("seed %s", seed)
                                .isNotEqualTo(Parts.of(advice, change.facet())));
                assertThat(line.changes()).isNotEmpty();
              });
    }
    for (Datum datum : advice.findings().data()) {
      if (datum.field().symbol().type() == ValueType.NUMBER
          && datum.knowledge() == Knowledge.RECORDED) {
        between(engine, advice, datum, margins, seed);
      }
    }
  }

  /** Every value on this side of both lines gives the same. */
  private static void between(
      Engine engine, Recommendation advice, Datum datum, Margins margins, long seed) {
    // A line that is not proven to be the nearest is said not to be.
    boolean unclear =
        margins.margins().stream().anyMatch(one -> one.datum().equals(datum) && !one.nearest());
    List<Margin> own = margins.margins().stream().filter(one -> one.datum().equals(datum)).toList();
    for (Value value : Parts.values(datum.field(), datum.field().allowed())) {
      boolean past =
          own.stream()
              .anyMatch(
                  margin ->
                      margin.below().filter(line -> value.compareTo(line.at()) <= 0).isPresent()
                          || margin
                              .above()
                              .filter(line -> value.compareTo(line.at()) >= 0)
                              .isPresent());
      if (!past && !unclear) {
        Recommendation there = at(engine, advice, datum, value);
        for (Facet facet : settled(advice)) {
          assertThat(Parts.of(there, facet))
              .as("seed %s, %s at %s", seed, datum.field().name(), value)
              .isEqualTo(Parts.of(advice, facet));
        }
      }
    }
  }

  private static List<Facet> settled(Recommendation advice) {
    return Stream.concat(
            advice.rankings().stream()
                .filter(RankingResult::firstIsCertain)
                .map(result -> new Facet(Facet.Kind.FIRST, result.ranking().name())),
            advice.decisions().stream()
                .filter(DecisionResult::isCertain)
                .filter(one -> one.table().shownAs() == ShownAs.HEADLINE && !one.table().votes())
                .map(result -> new Facet(Facet.Kind.DECISION, result.table().name())))
        .toList();
  }

  private static Recommendation at(Engine engine, Recommendation advice, Datum datum, Value value) {
    return engine.evaluate(Parts.with(advice.findings(), Map.of(datum.field().name(), value)));
  }
}
