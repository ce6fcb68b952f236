package org.cotyla.evaluate;

import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.value.PossibleValues;

/**
 * What a decision came to.
 *
 * @param table the decision
 * @param outputs what each output can be; for a list policy empty, since the rows are the result
 * @param firings every row that matched or may match; first those that count, in the order of the
 *     result, then those set aside, in the order of the sheet
 * @param byDefault whether no row matches, so that the default row gives the result
 * @param mayBeByDefault whether it may be that no row matches
 * @param defaultResults what the default row gives in each output column, when it may be that no
 *     row matches and there is a default row; else empty
 * @param faults contradictions
 */
public record DecisionResult(
    DecisionTable table,
    Map<String, PossibleValues> outputs,
    List<Firing> firings,
    boolean byDefault,
    boolean mayBeByDefault,
    List<PossibleValues> defaultResults,
    List<Fault> faults) {

  public DecisionResult {
    outputs = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(outputs));
    firings = List.copyOf(firings);
    defaultResults = List.copyOf(defaultResults);
    faults = List.copyOf(faults);
  }

  /** The rows that are, or may be, part of the result, in its order. */
  public List<Firing> counting() {
    return firings.stream().filter(Firing::counts).toList();
  }

  /** Gives the column's name and what it can be, unless the result is a list. */
  void value(DecisionTable.Output output, BiConsumer<Symbol, PossibleValues> taker) {
    PossibleValues value = outputs.get(output.symbol().name());
    if (value != null) {
      taker.accept(output.symbol(), value);
    }
  }

  /** Whether the result is the same whatever the open data are. */
  public boolean isCertain() {
    boolean rows = counting().stream().allMatch(firing -> firing.standing() == Standing.DECIDES);
    boolean values = outputs.values().stream().allMatch(PossibleValues::isCertain);
    boolean list = table.votes() || table.hitPolicy().isList();
    boolean listed =
        Stream.concat(
                counting().stream().flatMap(firing -> firing.results().stream()),
                defaultResults.stream())
            .allMatch(PossibleValues::isCertain);
    return faults.isEmpty() && values && (!list || (rows && listed));
  }
}
