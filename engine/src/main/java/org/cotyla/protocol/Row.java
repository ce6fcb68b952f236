package org.cotyla.protocol;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cotyla.expression.Expression;
import org.cotyla.expression.PreparedTest;
import org.cotyla.expression.Symbol;
import org.cotyla.issue.CellRef;

/**
 * One row of a decision table.
 *
 * @param id unique in the protocol and never used again
 * @param position its place in the table, counted from 0
 * @param tests one for each input column
 * @param results one for each output column; empty when it votes
 * @param vote what it does to an option, when its table votes
 * @param because its reason in one sentence
 * @param sources keys of sources
 * @param at the cell of its id
 */
public record Row(
    String id,
    int position,
    List<Test> tests,
    List<Result> results,
    Optional<Vote> vote,
    String because,
    List<String> sources,
    CellRef at) {

  /** A cell under an input: what its author wrote, and what that means. */
  public record Test(String text, PreparedTest prepared, CellRef at) {}

  /** A cell under an output. */
  public record Result(String text, Expression expression, CellRef at) {}

  public Row {
    tests = List.copyOf(tests);
    results = List.copyOf(results);
    sources = List.copyOf(sources);
  }

  /** Every name that its cells use. */
  public Set<Symbol> references() {
    Stream<Symbol> inTests =
        tests.stream().flatMap(test -> test.prepared().test().references().stream());
    Stream<Symbol> inResults =
        results.stream().flatMap(result -> result.expression().references().stream());
    return Stream.concat(inTests, inResults).collect(Collectors.toUnmodifiableSet());
  }
}
