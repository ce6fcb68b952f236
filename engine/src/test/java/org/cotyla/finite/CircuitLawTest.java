package org.cotyla.finite;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.constraints.IntRange;
import org.cotyla.finite.BooleanSolver.Verdict;
import org.cotyla.finite.Circuit.Term;

/** What is built of and, or and sums, held against every row of its truth table. */
@PropertyDefaults(tries = 150, edgeCases = EdgeCasesMode.NONE)
class CircuitLawTest {

  private static final int UNKNOWNS = 5;

  private final Circuit circuit = new Circuit(new Sat4jSolver(100_000));
  private final List<Integer> unknowns =
      IntStream.range(0, UNKNOWNS).map(i -> circuit.unknown()).boxed().toList();

  /** A literal, and its truth under each assignment. */
  private record Built(int literal, boolean[] table) {}

  @Property
  @Label("And, or and their opposites hold exactly where they should")
  void andOr(@ForAll long seed) {
    Random random = new Random(seed);
    Built built = build(random, 3);
    for (int row = 0; row < 1 << UNKNOWNS; row++) {
      assertHolds(built.literal(), row, built.table()[row]);
    }
  }

  @Property
  @Label("A sum reaches a degree exactly where its weights do, also with a literal in it twice")
  void reaches(@ForAll long seed, @ForAll @IntRange(min = -12, max = 12) int degree) {
    Random random = new Random(seed);
    List<Built> parts = new ArrayList<>();
    List<Term> terms = new ArrayList<>();
    List<Integer> weights = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(6); i++) {
      parts.add(build(random, 1));
      weights.add(random.nextInt(11) - 5);
      terms.add(new Term(parts.get(i).literal(), BigInteger.valueOf(weights.get(i))));
    }
    int reached = circuit.reaches(terms, BigInteger.valueOf(degree));
    int conditional = circuit.unknown();
    circuit.demandAtLeast(terms, BigInteger.valueOf(degree), conditional);
    for (int row = 0; row < 1 << UNKNOWNS; row++) {
      int sum = 0;
      for (int i = 0; i < parts.size(); i++) {
        sum += parts.get(i).table()[row] ? weights.get(i) : 0;
      }
      assertHolds(reached, row, sum >= degree);
      List<Integer> assumed = assignment(row);
      assumed.add(conditional);
      assertThat(circuit.solve(assumed))
          .isEqualTo(sum >= degree ? Verdict.FOUND : Verdict.IMPOSSIBLE);
    }
  }

  @Property(tries = 40)
  @Label("Of any number of literals exactly one holds, whichever it is")
  void exactlyOne(@ForAll @IntRange(min = 1, max = 40) int count) {
    List<Integer> literals = IntStream.range(0, count).map(i -> circuit.unknown()).boxed().toList();
    circuit.demandExactlyOne(literals);
    for (int i = 0; i < count; i++) {
      assertThat(circuit.solve(List.of(literals.get(i)))).isEqualTo(Verdict.FOUND);
      for (int j = 0; j < count; j++) {
        assertThat(circuit.holds(literals.get(j))).isEqualTo(i == j);
      }
      int next = literals.get((i + 1) % count);
      assertThat(circuit.solve(List.of(literals.get(i), next)))
          .isEqualTo(count == 1 ? Verdict.FOUND : Verdict.IMPOSSIBLE);
    }
    assertThat(circuit.solve(literals.stream().map(literal -> -literal).toList()))
        .isEqualTo(Verdict.IMPOSSIBLE);
  }

  @Property(tries = 1)
  @Label("To demand one of none, or a sum that cannot be reached, is a contradiction")
  void contradiction() {
    assertThat(circuit.solve(List.of())).isEqualTo(Verdict.FOUND);
    circuit.demandAtLeast(List.of(), BigInteger.ONE, circuit.yes());
    assertThat(circuit.solve(List.of())).isEqualTo(Verdict.IMPOSSIBLE);
    Circuit other = new Circuit(new Sat4jSolver(100_000));
    other.demandAny(List.of());
    assertThat(other.solve(List.of())).isEqualTo(Verdict.IMPOSSIBLE);
  }

  private Built build(Random random, int depth) {
    if (depth == 0 || random.nextInt(5) == 0) {
      return leaf(random);
    }
    boolean conjunction = random.nextBoolean();
    boolean[] table = new boolean[1 << UNKNOWNS];
    java.util.Arrays.fill(table, conjunction);
    List<Integer> parts = new ArrayList<>();
    for (int i = 0; i < random.nextInt(4); i++) {
      Built part = build(random, depth - 1);
      parts.add(part.literal());
      for (int row = 0; row < table.length; row++) {
        table[row] =
            conjunction ? table[row] && part.table()[row] : table[row] || part.table()[row];
      }
    }
    return new Built(conjunction ? circuit.and(parts) : circuit.or(parts), table);
  }

  private Built leaf(Random random) {
    int place = random.nextInt(UNKNOWNS + 1);
    boolean opposite = random.nextBoolean();
    int literal = place == UNKNOWNS ? circuit.yes() : unknowns.get(place);
    boolean[] table = new boolean[1 << UNKNOWNS];
    for (int row = 0; row < table.length; row++) {
      table[row] = (place == UNKNOWNS || (row >> place & 1) == 1) != opposite;
    }
    return new Built(opposite ? -literal : literal, table);
  }

  private List<Integer> assignment(int row) {
    List<Integer> assumed = new ArrayList<>();
    for (int i = 0; i < UNKNOWNS; i++) {
      assumed.add((row >> i & 1) == 1 ? unknowns.get(i) : -unknowns.get(i));
    }
    return assumed;
  }

  private void assertHolds(int literal, int row, boolean expected) {
    List<Integer> assumed = assignment(row);
    assumed.add(literal);
    assertThat(circuit.solve(assumed)).isEqualTo(expected ? Verdict.FOUND : Verdict.IMPOSSIBLE);
    assumed.set(UNKNOWNS, -literal);
    assertThat(circuit.solve(assumed)).isEqualTo(expected ? Verdict.IMPOSSIBLE : Verdict.FOUND);
  }
}
