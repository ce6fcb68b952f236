package org.cotyla.value;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;

/**
 * Ends are whole numbers from -3 to 3 (or three words), and the points that are looked at are these
 * ends, what lies between them and what lies beyond: no two different sets agree on all points.
 */
@PropertyDefaults(tries = 2000, edgeCases = EdgeCasesMode.NONE)
class ValueSetLawsTest {

  private static final List<Value> NUMBERS =
      IntStream.rangeClosed(-8, 8)
          .mapToObj(half -> Value.of(new BigDecimal(half).divide(new BigDecimal(2))))
          .toList();
  private static final List<Value> WORDS =
      Stream.of("", "a", "aa", "b", "bb", "c", "cc").map(Value::of).toList();
  private static final List<Value> ANSWERS = List.of(Value.of(false), Value.of(true));

  record Pair(ValueSet a, ValueSet b, List<Value> points) {}

  @Provide
  Arbitrary<Pair> pairs() {
    Arbitrary<Value> whole = Arbitraries.integers().between(-3, 3).map(Value::of);
    Arbitrary<Value> word = Arbitraries.of("a", "b", "c").map(Value::of);
    return Arbitraries.oneOf(
        pairs(sets(ValueType.NUMBER, whole), NUMBERS),
        pairs(sets(ValueType.TEXT, word), WORDS),
        pairs(
            Arbitraries.of(ANSWERS).set().ofMaxSize(2).map(v -> ValueSet.of(ValueType.YES_NO, v)),
            ANSWERS));
  }

  private static Arbitrary<Pair> pairs(Arbitrary<ValueSet> sets, List<Value> points) {
    return Combinators.combine(sets, sets).as((a, b) -> new Pair(a, b, points));
  }

  private static Arbitrary<ValueSet> sets(ValueType type, Arbitrary<Value> ends) {
    Arbitrary<Boolean> coin = Arbitraries.of(true, false);
    Arbitrary<List<Interval>> intervals =
        Combinators.combine(ends.injectNull(0.2), coin, ends.injectNull(0.2), coin)
            .as(Interval::between)
            .list()
            .ofMaxSize(4)
            .map(list -> list.stream().flatMap(java.util.Optional::stream).toList());
    Arbitrary<List<Interval>> points = ends.map(Interval::point).list().ofMaxSize(4);
    return Arbitraries.oneOf(intervals, points).map(list -> ValueSet.ofIntervals(type, list));
  }

  private static List<Value> inside(ValueSet set, List<Value> points) {
    return points.stream().filter(set::contains).toList();
  }

  private static void assertMembership(
      Pair pair, ValueSet made, Function<Value, Boolean> expected) {
    assertThat(inside(made, pair.points))
        .isEqualTo(pair.points.stream().filter(expected::apply).toList());
  }

  @Property
  @Label("A union holds exactly what either set holds")
  void union(@ForAll("pairs") Pair pair) {
    assertMembership(
        pair, pair.a.union(pair.b), value -> pair.a.contains(value) || pair.b.contains(value));
  }

  @Property
  @Label("An intersection holds exactly what both sets hold")
  void intersection(@ForAll("pairs") Pair pair) {
    assertMembership(
        pair, pair.a.intersect(pair.b), value -> pair.a.contains(value) && pair.b.contains(value));
  }

  @Property
  @Label("A complement holds exactly what the set does not hold, and its complement is the set")
  void complement(@ForAll("pairs") Pair pair) {
    assertMembership(pair, pair.a.complement(), value -> !pair.a.contains(value));
    assertThat(pair.a.complement().complement()).isEqualTo(pair.a);
  }

  @Property
  @Label("One set contains all of another exactly when every point of it is inside")
  void containsAll(@ForAll("pairs") Pair pair) {
    assertThat(pair.a.containsAll(pair.b))
        .isEqualTo(inside(pair.b, pair.points).stream().allMatch(pair.a::contains));
  }

  @Property
  @Label("Two sets intersect exactly when they share a point, and then their intersection has it")
  void intersects(@ForAll("pairs") Pair pair) {
    boolean shared = inside(pair.b, pair.points).stream().anyMatch(pair.a::contains);
    assertThat(pair.a.intersects(pair.b)).isEqualTo(shared);
    assertThat(pair.a.intersect(pair.b).isEmpty()).isEqualTo(!shared);
  }

  @Property
  @Label("A region is true for a set when all its points are inside, false when none, else open")
  void truthFor(@ForAll("pairs") Pair pair) {
    List<Value> given = inside(pair.b, pair.points);
    if (given.isEmpty()) {
      return;
    }
    long met = given.stream().filter(pair.a::contains).count();
    Truth expected = met == given.size() ? Truth.TRUE : met == 0 ? Truth.FALSE : Truth.OPEN;
    assertThat(pair.a.truthFor(pair.b)).isEqualTo(expected);
  }

  @Property
  @Label("Parts stand in ascending order and neither overlap nor touch")
  void partsAreFewest(@ForAll("pairs") Pair pair) {
    for (ValueSet set : List.of(pair.a, pair.a.union(pair.b), pair.a.complement())) {
      for (int i = 1; i < set.parts().size(); i++) {
        assertThat(set.parts().get(i - 1).reaches(set.parts().get(i))).isFalse();
        assertThat(Interval.compareLow(set.parts().get(i - 1), set.parts().get(i))).isNegative();
      }
    }
  }

  @Property
  @Label("Sets that hold the same points are equal, with equal hashes and the same text")
  void equality(@ForAll("pairs") Pair pair) {
    assertEquality(pair, pair.a);
    assertEquality(pair, pair.a.complement());
  }

  private static void assertEquality(Pair pair, ValueSet a) {
    boolean same = inside(a, pair.points).equals(inside(pair.b, pair.points));
    assertThat(a.equals(pair.b)).isEqualTo(same);
    assertThat(a.plain().equals(pair.b.plain())).isEqualTo(same);
    if (same) {
      assertThat(a).hasSameHashCodeAs(pair.b);
    }
  }

  @Property
  @Label("The hull holds the whole set, and a single value is one that is alone")
  void hullAndSingle(@ForAll("pairs") Pair pair) {
    List<Value> points = inside(pair.a, pair.points);
    if (!pair.a.isEmpty()) {
      assertThat(points).allMatch(pair.a.hull()::contains);
    }
    pair.a.single().ifPresent(only -> assertThat(points).containsExactly(only));
    if (pair.a.isFinite()) {
      assertThat(pair.a.values()).isEqualTo(points);
    }
  }

  @Property
  @Label("What can be also nothing contains what cannot, and a union contains both")
  void possibleValues(
      @ForAll("pairs") Pair pair, @ForAll boolean aNothing, @ForAll boolean bNothing) {
    PossibleValues a = new PossibleValues(pair.a, aNothing);
    PossibleValues b = new PossibleValues(pair.b, bNothing);
    PossibleValues both = a.union(b);
    assertThat(both.containsAll(a)).isTrue();
    assertThat(both.containsAll(b)).isTrue();
    assertThat(a.containsAll(b)).isEqualTo(pair.a.containsAll(pair.b) && (aNothing || !bNothing));
    assertThat(both.orNothing()).isEqualTo(aNothing || bNothing);
  }
}
