package org.cotyla.explain;

import java.util.List;
import java.util.Optional;
import org.cotyla.evaluate.Contribution;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankedOption.Availability;

/**
 * An option whose place, points or availability differ.
 *
 * @param before how it stood in the one answer
 * @param after how it stands in the other
 * @param rows the rows that speak for, against or rule it out otherwise
 */
public record OptionChange(RankedOption before, RankedOption after, List<RowChange> rows) {

  public OptionChange {
    rows = List.copyOf(rows);
  }

  public String name() {
    return after.name();
  }

  public boolean isNewlyRuledOut() {
    return isRuledOut(after) && !isRuledOut(before);
  }

  public boolean isNoLongerRuledOut() {
    return isRuledOut(before) && !isRuledOut(after);
  }

  private static boolean isRuledOut(RankedOption option) {
    return option.availability() == Availability.RULED_OUT;
  }

  /** The difference between how one option stands in two answers, if there is any. */
  static Optional<OptionChange> between(RankedOption before, RankedOption after) {
    List<RowChange> rows = RowChange.between(firings(before), firings(after));
    boolean same =
        before.place() == after.place()
            && before.points().plain().equals(after.points().plain())
            && before.availability() == after.availability()
            && before.canBeFirst() == after.canBeFirst()
            && rows.isEmpty();
    return same ? Optional.empty() : Optional.of(new OptionChange(before, after, rows));
  }

  private static List<Firing> firings(RankedOption option) {
    return option.contributions().stream().map(Contribution::firing).toList();
  }
}
