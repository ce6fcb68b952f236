package org.cotyla.testcases.explore;

import static org.assertj.core.api.Assertions.assertThat;

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
import org.cotyla.explore.Condition;
import org.cotyla.explore.Conditions;
import org.cotyla.explore.Facet;
import org.cotyla.explore.Influence;
import org.cotyla.explore.Reach;
import org.cotyla.explore.WhatMatters;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Findings;
import org.cotyla.protocol.Protocol;
import org.cotyla.testcases.generated.RandomCases;
import org.cotyla.testcases.generated.RandomProtocol;
import org.cotyla.value.Value;

/** Checked against running pairs of cases one by one. Source: this project's own engine. */
@Label("What a missing datum can change")
class WhatMattersLawTest {

  private static final int PAIRS = 40;

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  @Label("is never proven impossible where two cases that differ in it alone differ")
  void proofsHold(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    Protocol protocol = RandomProtocol.of(seed);
    Engine engine = Engine.of(protocol);
    Random random = new Random(seed);
    Recommendation advice = engine.evaluate(RandomCases.of(protocol, random, 4));
    WhatMatters matters = WhatMatters.of(engine, advice);
    for (Influence influence : matters.data()) {
      for (int i = 0; i < PAIRS; i++) {
        Map<String, Value> filling = filling(advice, random);
        Recommendation one = engine.evaluate(Parts.with(advice.findings(), filling));
        Datum varied = influence.datum();
        filling.put(
            varied.field().name(), Parts.pick(varied.field(), varied.value().values(), random));
        Recommendation other = engine.evaluate(Parts.with(advice.findings(), filling));
        // Where rows contradict each other an answer leaves open what may be settled.
        boolean sound = one.faults().isEmpty() && other.faults().isEmpty();
        for (Reach reach : sound ? influence.reaches() : List.<Reach>of()) {
          if (reach.verdict() == Reach.Verdict.CANNOT && reach.facet().kind() != Facet.Kind.SHOWN) {
            assertThat(Parts.of(other, reach.facet()))
                .as("seed %s, %s by %s", seed, reach.facet(), varied.field().name())
                .isEqualTo(Parts.of(one, reach.facet()));
          }
        }
      }
    }
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  @Label("is shown by two cases that differ in it alone and in the result")
  void witnessesHold(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    Protocol protocol = RandomProtocol.of(seed);
    Engine engine = Engine.of(protocol);
    Recommendation advice = engine.evaluate(RandomCases.of(protocol, new Random(seed), 4));
    for (Influence influence : WhatMatters.of(engine, advice).data()) {
      for (Reach reach : influence.changes()) {
        Reach.Witness witness = reach.witness().orElseThrow();
        assertThat(differing(witness.one().findings(), witness.other().findings()))
            .containsExactly(influence.datum().field().name());
        assertThat(witness.one().findings().data())
            .allSatisfy(
                datum ->
                    assertThat(
                            advice
                                .findings()
                                .datum(datum.field().name())
                                .orElseThrow()
                                .value()
                                .containsAll(datum.value()))
                        .isTrue());
        if (reach.facet().kind() != Facet.Kind.SHOWN) {
          assertThat(Parts.of(witness.one(), reach.facet()))
              .as("seed %s %s by %s", seed, reach.facet(), influence.datum().field().name())
              .isNotEqualTo(Parts.of(witness.other(), reach.facet()));
        }
      }
    }
  }

  @Property(tries = 120, edgeCases = EdgeCasesMode.NONE)
  @Label("under a condition is nothing where the condition is not met")
  void conditionsHold(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    Protocol protocol = RandomProtocol.of(seed);
    Engine engine = Engine.of(protocol);
    Random random = new Random(seed);
    Recommendation advice = engine.evaluate(RandomCases.of(protocol, random, 6));
    WhatMatters matters = WhatMatters.of(engine, advice);
    for (Condition condition : Conditions.of(engine, matters).conditions()) {
      for (int i = 0; i < PAIRS; i++) {
        Map<String, Value> filling = filling(advice, random);
        Recommendation one = engine.evaluate(Parts.with(advice.findings(), filling));
        Datum varied = advice.findings().datum(condition.datum().name()).orElseThrow();
        boolean met = condition.when().contains(filling.get(condition.other().name()));
        filling.put(
            condition.datum().name(),
            Parts.pick(condition.datum(), varied.value().values(), random));
        Recommendation other = engine.evaluate(Parts.with(advice.findings(), filling));
        boolean sound = one.faults().isEmpty() && other.faults().isEmpty();
        if (!met && sound) {
          assertThat(Parts.of(other, condition.facet()))
              .as("seed %s, %s", seed, condition)
              .isEqualTo(Parts.of(one, condition.facet()));
        }
      }
    }
  }

  private static Map<String, Value> filling(Recommendation advice, Random random) {
    Map<String, Value> filling = new HashMap<>();
    for (Datum datum : Parts.open(advice.findings())) {
      filling.put(datum.field().name(), Parts.pick(datum.field(), datum.value().values(), random));
    }
    return filling;
  }

  private static List<String> differing(Findings one, Findings other) {
    return one.data().stream()
        .filter(
            datum -> !other.datum(datum.field().name()).orElseThrow().value().equals(datum.value()))
        .map(datum -> datum.field().name())
        .toList();
  }
}
