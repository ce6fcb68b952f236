package org.cotyla.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankingResult;

/**
 * A ranking in two answers. Held for every ranking, since who comes first is asked in any case.
 *
 * @param before the ranking in the one answer
 * @param after the ranking in the other
 * @param options the options that stand otherwise, in the order of the second answer
 */
public record RankingChange(RankingResult before, RankingResult after, List<OptionChange> options) {

  public RankingChange {
    options = List.copyOf(options);
  }

  public String name() {
    return after.ranking().name();
  }

  /** Whether another option comes first. */
  public boolean changesLeader() {
    return !name(before.leader()).equals(name(after.leader()));
  }

  /** Whether another option comes or could come first. */
  public boolean changesFirst() {
    return changesLeader() || !before.first().equals(after.first());
  }

  public Optional<OptionChange> option(String name) {
    return options.stream().filter(option -> option.name().equals(name)).findFirst();
  }

  public List<OptionChange> newlyRuledOut() {
    return options.stream().filter(OptionChange::isNewlyRuledOut).toList();
  }

  public List<OptionChange> noLongerRuledOut() {
    return options.stream().filter(OptionChange::isNoLongerRuledOut).toList();
  }

  private static Optional<String> name(Optional<RankedOption> option) {
    return option.map(RankedOption::name);
  }

  static RankingChange between(RankingResult before, RankingResult after) {
    List<OptionChange> options = new ArrayList<>();
    for (RankedOption option : after.options()) {
      before
          .option(option.name())
          .flatMap(was -> OptionChange.between(was, option))
          .ifPresent(options::add);
    }
    return new RankingChange(before, after, options);
  }
}
