package org.cotyla.protocol;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cotyla.expression.Symbol;

/**
 * Options that are weighed against each other.
 *
 * @param name what they are, for example {@code construct}
 * @param options the options; their order settles ties
 * @param first the derived name for the option that comes first, nothing when all are ruled out
 * @param voters the decisions that vote, in the order of the workbook
 */
public record Ranking(String name, List<Option> options, Symbol first, List<DecisionTable> voters)
    implements Step {

  public Ranking {
    options = List.copyOf(options);
    voters = List.copyOf(voters);
  }

  @Override
  public Set<Symbol> needs() {
    return voters.stream()
        .flatMap(voter -> Stream.concat(voter.needs().stream(), voter.gives().stream()))
        .collect(Collectors.toUnmodifiableSet());
  }

  @Override
  public Set<Symbol> gives() {
    return Set.of(first);
  }
}
