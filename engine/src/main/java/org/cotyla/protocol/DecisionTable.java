package org.cotyla.protocol;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cotyla.expression.Symbol;
import org.cotyla.issue.CellRef;

/**
 * A decision and its table.
 *
 * @param name the decision's name
 * @param asks the question it answers
 * @param hitPolicy what its result is when several rows match
 * @param ranking the ranking it votes in, when it votes
 * @param shownAs where its result is shown
 * @param inputs the columns of tests
 * @param outputs the columns of results; empty when it votes
 * @param rows the rows in the order of the sheet
 * @param otherwise the row for 'no row matches', when there is one
 * @param at the cell of its name
 */
public record DecisionTable(
    String name,
    String asks,
    HitPolicy hitPolicy,
    Optional<String> ranking,
    ShownAs shownAs,
    List<Input> inputs,
    List<Output> outputs,
    List<Row> rows,
    Optional<Row> otherwise,
    CellRef at)
    implements Step {

  /** A column of tests. */
  public record Input(Symbol symbol, CellRef at) {}

  /** A column of results. */
  public record Output(Symbol symbol, CellRef at) {}

  public DecisionTable {
    inputs = List.copyOf(inputs);
    outputs = List.copyOf(outputs);
    rows = List.copyOf(rows);
  }

  public boolean votes() {
    return ranking.isPresent();
  }

  @Override
  public Set<Symbol> needs() {
    Stream<Symbol> columns = inputs.stream().map(Input::symbol);
    Stream<Symbol> cells =
        Stream.concat(rows.stream(), otherwise.stream()).flatMap(row -> row.references().stream());
    return Stream.concat(columns, cells).collect(Collectors.toUnmodifiableSet());
  }

  @Override
  public Set<Symbol> gives() {
    return outputs.stream().map(Output::symbol).collect(Collectors.toUnmodifiableSet());
  }
}
