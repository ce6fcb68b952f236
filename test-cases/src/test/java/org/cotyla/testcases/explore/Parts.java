package org.cotyla.testcases.explore;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.evaluate.Standing;
import org.cotyla.explore.Facet;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.finding.Findings;
import org.cotyla.finding.Given;
import org.cotyla.protocol.Field;
import org.cotyla.testcases.generated.RandomCases;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;

/** Parts of an answer read a second way, and findings with values put in by hand. */
final class Parts {

  private Parts() {}

  /** What a part of the answer is; two answers agree in it when this is equal. */
  static Object of(Recommendation answer, Facet facet) {
    return switch (facet.kind()) {
      case FIRST -> answer.ranking(facet.name()).orElseThrow().first();
      case RULED_OUT ->
          answer.ranking(facet.name()).orElseThrow().options().stream()
              .filter(option -> option.availability() != RankedOption.Availability.AVAILABLE)
              .map(option -> option.name() + option.availability())
              .collect(Collectors.toSet());
      case DECISION -> decision(answer.decision(facet.name()).orElseThrow());
      case SHOWN -> throw new IllegalArgumentException("not one part");
    };
  }

  private static Object decision(DecisionResult result) {
    if (!result.table().hitPolicy().isList()) {
      return result.outputs();
    }
    Set<Object> entries = new HashSet<>();
    for (Firing firing : result.counting()) {
      entries.add(List.of(firing.results(), firing.standing()));
    }
    // What the default row gives is an entry like any other, by whichever row it comes about.
    if (!result.defaultResults().isEmpty()) {
      Standing standing = result.byDefault() ? Standing.DECIDES : Standing.MAY_DECIDE;
      entries.add(List.of(result.defaultResults(), standing));
    }
    return entries;
  }

  /** The findings with some fields stated. */
  static Findings with(Findings findings, Map<String, Value> values) {
    List<Datum> data = new ArrayList<>();
    for (Datum datum : findings.data()) {
      Value value = values.get(datum.field().name());
      data.add(
          value == null
              ? datum
              : new Datum(datum.field(), Knowledge.RECORDED, PossibleValues.of(value)));
    }
    return new Findings(findings.title(), findings.stage(), data, List.of());
  }

  /** The fields that are not fully known, without those of a later stage. */
  static List<Datum> open(Findings findings) {
    return findings.data().stream()
        .filter(datum -> datum.knowledge() != Knowledge.NOT_YET)
        .filter(datum -> datum.value().single().isEmpty())
        .toList();
  }

  /** Values of a set that the cells of generated protocols can tell apart. */
  static List<Value> values(Field field, ValueSet among) {
    List<Value> all = new ArrayList<>();
    if (among.isFinite()) {
      all.addAll(among.values());
    } else {
      RandomCases.representatives(field).stream()
          .map(Parts::value)
          .flatMap(Optional::stream)
          .filter(among::contains)
          .forEach(all::add);
    }
    return all;
  }

  private static Optional<Value> value(Given given) {
    if (given instanceof Given.Amount amount) {
      return Optional.of(Value.of(amount.number()));
    } else if (given instanceof Given.YesNo yesNo) {
      return Optional.of(Value.of(yesNo.yes()));
    } else if (given instanceof Given.Day day) {
      return Optional.of(Value.of(day.date()));
    } else if (given instanceof Given.Word word) {
      return Optional.of(Value.of(word.text()));
    }
    return Optional.empty();
  }

  static Value pick(Field field, ValueSet among, Random random) {
    List<Value> values = values(field, among);
    return values.get(random.nextInt(values.size()));
  }
}
