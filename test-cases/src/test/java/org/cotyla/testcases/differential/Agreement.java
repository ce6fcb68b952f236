package org.cotyla.testcases.differential;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Supplier;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankedOption.Availability;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.evaluate.Standing;
import org.cotyla.protocol.Row;
import org.cotyla.testcases.differential.PlainInterpreter.Decided;
import org.cotyla.testcases.differential.PlainInterpreter.Ranked;
import org.cotyla.testcases.differential.PlainInterpreter.World;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/** What the engine's answer must have in common with the plain interpreter's. */
final class Agreement {

  private final Supplier<String> where;

  Agreement(Supplier<String> where) {
    this.where = where;
  }

  /** For complete data without contradictions: the same in every respect. */
  void same(Recommendation advice, World world) {
    for (DecisionResult result : advice.decisions()) {
      Decided plain = world.decisions().get(result.table().name());
      assertThat(rows(result.firings()))
          .as(where)
          .containsExactlyInAnyOrderElementsOf(ids(plain.matching()));
      assertThat(rows(result.counting())).as(where).isEqualTo(ids(plain.counting()));
      assertThat(result.counting()).as(where).allMatch(f -> f.standing() == Standing.DECIDES);
      assertThat(result.firings()).as(where).allMatch(Firing::certain);
      assertThat(result.byDefault()).as(where).isEqualTo(plain.matching().isEmpty());
      assertThat(result.faults()).as(where).isEmpty();
      assertThat(result.isCertain()).as(where).isTrue();
      result
          .outputs()
          .forEach(
              (name, value) -> {
                assertThat(value.isCertain()).as(where).isTrue();
                assertInside(value, plain.outputs().get(name), name);
              });
    }
    for (RankingResult result : advice.rankings()) {
      Ranked plain = world.rankings().get(result.ranking().name());
      assertThat(result.options().stream().map(RankedOption::name))
          .as(where)
          .containsExactlyElementsOf(plain.order());
      assertThat(result.options()).as(where).allMatch(option -> option.points().isCertain());
      assertThat(result.firstIsCertain()).as(where).isTrue();
    }
    inside(advice, world);
  }

  /** For one way to fill in what is open: inside what the engine says is possible. */
  void inside(Recommendation advice, World world) {
    advice
        .calculations()
        .forEach((name, value) -> assertInside(value, world.calculations().get(name), name));
    for (DecisionResult result : advice.decisions()) {
      inside(result, world.decisions().get(result.table().name()));
    }
    for (RankingResult result : advice.rankings()) {
      inside(result, world.rankings().get(result.ranking().name()));
    }
  }

  private void inside(DecisionResult result, Decided plain) {
    String table = result.table().name();
    List<String> matching = ids(plain.matching());
    List<String> counting = ids(plain.counting());
    assertThat(rows(result.firings()))
        .as(() -> table + ": rows that match are not out; " + where.get())
        .containsAll(matching);
    assertThat(matching)
        .as(() -> table + ": certain rows match; " + where.get())
        .containsAll(rows(result.firings().stream().filter(Firing::certain).toList()));
    assertThat(rows(result.counting()))
        .as(() -> table + ": rows that decide may; " + where.get())
        .containsAll(counting);
    assertThat(counting)
        .as(() -> table + ": rows said to decide do; " + where.get())
        .containsAll(
            rows(result.firings().stream().filter(f -> f.standing() == Standing.DECIDES).toList()));
    if (matching.isEmpty()) {
      assertThat(result.mayBeByDefault())
          .as(() -> table + ": no row matches; " + where.get())
          .isTrue();
    } else {
      assertThat(result.byDefault()).as(() -> table + ": a row matches; " + where.get()).isFalse();
    }
    if (!result.faults().isEmpty()) {
      assertThat(plain.isFault()).as(() -> table + ": contradicts; " + where.get()).isTrue();
    }
    result.outputs().forEach((name, value) -> assertInside(value, plain.outputs().get(name), name));
  }

  private void inside(RankingResult result, Ranked plain) {
    assertInside(result.first(), plain.first(), "first " + result.ranking().name());
    for (RankedOption option : result.options()) {
      BigDecimal points = plain.points().get(option.name());
      assertThat(points)
          .as(() -> option.name() + " " + option.points() + "; " + where.get())
          .isBetween(option.points().least(), option.points().most());
      boolean out = plain.out().contains(option.name());
      assertThat(option.availability())
          .as(() -> option.name() + " is out: " + out + "; " + where.get())
          .isNotEqualTo(out ? Availability.AVAILABLE : Availability.RULED_OUT);
    }
  }

  private void assertInside(PossibleValues value, Object plain, String name) {
    boolean inside = plain == null ? value.orNothing() : value.values().contains(value(plain));
    assertThat(inside)
        .as(() -> name + " is " + plain + ", said to be " + value + "; " + where.get())
        .isTrue();
  }

  private static Value value(Object plain) {
    if (plain instanceof BigDecimal number) {
      return Value.of(number);
    }
    if (plain instanceof String text) {
      return Value.of(text);
    }
    return plain instanceof Boolean answer ? Value.of(answer) : Value.of((LocalDate) plain);
  }

  static List<String> rows(List<Firing> firings) {
    return firings.stream().map(firing -> firing.row().id()).toList();
  }

  static List<String> ids(List<Row> rows) {
    return rows.stream().map(Row::id).toList();
  }
}
