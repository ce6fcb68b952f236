package org.cotyla.finite;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import org.cotyla.finite.Alternatives.Leaf;
import org.cotyla.finite.BooleanSolver.Verdict;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/** The classes of names: how they are cut, what stands for them, and sums that fall in them. */
@PropertyDefaults(tries = 300, edgeCases = EdgeCasesMode.NONE)
class ClassesLawTest {

  private final Circuit circuit = new Circuit(new Sat4jSolver(100_000));

  @Property
  @Label("However classes are cut, each value lies in exactly one, which holds within a region")
  void partition(@ForAll long seed) {
    Random random = new Random(seed);
    ValueType type = ValueType.values()[random.nextInt(ValueType.values().length)];
    PossibleValues all = new PossibleValues(Sets.of(type, random), random.nextBoolean());
    if (Steps.within(all.values()).isEmpty()) {
      return;
    }
    Alternatives classes = Alternatives.free(circuit, all);
    List<ValueSet> regions = new ArrayList<>();
    List<Integer> inside = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      regions.add(Sets.of(type, random));
      inside.add(classes.within(regions.get(i), i % 2 == 0));
    }
    for (Value value : Sets.points(type)) {
      long homes =
          classes.leaves().stream().filter(l -> l.values().values().contains(value)).count();
      assertThat(homes).isEqualTo(all.values().contains(value) ? 1 : 0);
    }
    for (Leaf leaf : classes.leaves()) {
      assertThat(circuit.solve(List.of(leaf.literal()))).isEqualTo(Verdict.FOUND);
      assertThat(classes.leaves().get(classes.found())).isEqualTo(leaf);
      for (int i = 0; i < 4; i++) {
        boolean expected =
            leaf.values().isNothing()
                ? i % 2 == 0
                : regions.get(i).containsAll(leaf.values().values());
        assertThat(circuit.holds(inside.get(i))).isEqualTo(expected);
        if (!expected) {
          assertThat(regions.get(i).intersects(leaf.values().values())).isFalse();
        }
      }
    }
  }

  @Property
  @Label("What stands for a set lies in it, of every type, also when drawn at random")
  void representative(@ForAll long seed) {
    Random random = new Random(seed);
    for (ValueType type : ValueType.values()) {
      for (Interval part : Steps.within(Sets.of(type, random)).parts()) {
        ValueSet values = ValueSet.ofIntervals(type, List.of(part));
        assertThat(values.contains(Representative.of(values))).as("%s", values).isTrue();
        SplittableRandom dice = new SplittableRandom(seed);
        for (int i = 0; i < 8; i++) {
          Value drawn = Representative.sample(values, dice);
          assertThat(values.contains(drawn)).as("%s of %s", drawn, values).isTrue();
        }
      }
    }
  }

  @Property
  @Label("Narrowed to where there are values, a set still holds every value that it held")
  void steps(@ForAll long seed) {
    Random random = new Random(seed);
    for (ValueType type : ValueType.values()) {
      ValueSet values = Sets.of(type, random);
      ValueSet narrowed = Steps.within(values);
      for (Value point : Sets.points(type)) {
        assertThat(narrowed.contains(point)).isEqualTo(values.contains(point));
      }
    }
  }

  @Property
  @Label("A sum is in the class that it is in, however its range is cut")
  void sums(@ForAll long seed) {
    Random random = new Random(seed);
    WeightedSum sum = new WeightedSum(circuit);
    List<Integer> literals = new ArrayList<>();
    List<BigDecimal> weights = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(5); i++) {
      literals.add(circuit.unknown());
      weights.add(BigDecimal.valueOf(random.nextInt(41) - 20, 1));
      sum.add(literals.get(i), weights.get(i));
    }
    Alternatives classes =
        Alternatives.of(
            circuit,
            List.of(new Leaf(PossibleValues.of(sum.range()), circuit.yes())),
            Optional.of(sum));
    ValueSet region = Sets.of(ValueType.NUMBER, random);
    int within = classes.within(region, false);
    for (int row = 0; row < 1 << literals.size(); row++) {
      int place = row;
      BigDecimal total =
          IntStream.range(0, literals.size())
              .filter(i -> (place >> i & 1) == 1)
              .mapToObj(weights::get)
              .reduce(BigDecimal.ZERO, BigDecimal::add);
      List<Integer> assumed =
          IntStream.range(0, literals.size())
              .mapToObj(i -> (place >> i & 1) == 1 ? literals.get(i) : -literals.get(i))
              .toList();
      assertThat(circuit.solve(assumed)).isEqualTo(Verdict.FOUND);
      assertThat(circuit.holds(within)).isEqualTo(region.contains(Value.of(total)));
      assertThat(classes.leaves().get(classes.found()).values().values().contains(Value.of(total)))
          .isTrue();
    }
  }

  @Property(tries = 1)
  @Label("Sums keep every digit, and say when an evaluation would not")
  void digits() {
    WeightedSum sum = new WeightedSum(circuit);
    sum.add(circuit.unknown(), new BigDecimal(BigInteger.TEN.pow(30)));
    assertThat(sum.isExact()).isTrue();
    sum.add(circuit.unknown(), new BigDecimal("0.00001"));
    assertThat(sum.isExact()).isFalse();
    assertThat(sum.range().plain()).isEqualTo("[0.." + BigInteger.TEN.pow(30) + ".00001]");
  }

  /** Random sets of a type, and points that tell any two of them apart. */
  private static final class Sets {

    static List<Value> points(ValueType type) {
      return switch (type) {
        case NUMBER ->
            IntStream.rangeClosed(-9, 9)
                .mapToObj(i -> Value.of(new BigDecimal(i * 5).movePointLeft(1)))
                .toList();
        case TEXT ->
            java.util.stream.Stream.of("", "a", "b", "bb", "c", "zzzzz").map(Value::of).toList();
        case DATE ->
            IntStream.rangeClosed(1, 9)
                .mapToObj(day -> Value.of(LocalDate.of(2026, 1, day)))
                .toList();
        case YES_NO -> List.of(Value.of(false), Value.of(true));
      };
    }

    static ValueSet of(ValueType type, Random random) {
      List<Value> points = points(type);
      if (type == ValueType.YES_NO) {
        return ValueSet.of(type, points.stream().filter(p -> random.nextBoolean()).toList());
      }
      List<Interval> parts = new ArrayList<>();
      for (int i = 0; i < 1 + random.nextInt(3); i++) {
        Value low = random.nextInt(5) == 0 ? null : points.get(random.nextInt(points.size()));
        Value high = random.nextInt(5) == 0 ? null : points.get(random.nextInt(points.size()));
        if (random.nextInt(3) == 0 && low != null) {
          parts.add(Interval.point(low));
        } else {
          Interval.between(low, random.nextBoolean(), high, random.nextBoolean())
              .ifPresent(parts::add);
        }
      }
      return ValueSet.ofIntervals(type, parts);
    }
  }
}
