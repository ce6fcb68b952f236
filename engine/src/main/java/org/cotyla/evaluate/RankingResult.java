package org.cotyla.evaluate;

import java.util.List;
import java.util.Optional;
import org.cotyla.evaluate.RankedOption.Availability;
import org.cotyla.protocol.Ranking;
import org.cotyla.value.PossibleValues;

/**
 * Options weighed against each other.
 *
 * @param ranking what was weighed
 * @param options every option: those available by their points, ties by the order of the workbook,
 *     then those ruled out in the order of the workbook
 * @param first which option can come first, by name; nothing when all may be ruled out
 */
public record RankingResult(Ranking ranking, List<RankedOption> options, PossibleValues first) {

  public RankingResult {
    options = List.copyOf(options);
  }

  /** The option that stands first now, if any is left. */
  public Optional<RankedOption> leader() {
    return options.stream().filter(o -> o.availability() != Availability.RULED_OUT).findFirst();
  }

  /** Whether the first place is the same whatever the open data are. */
  public boolean firstIsCertain() {
    return first.isCertain();
  }

  /** Whether what is certain already gives the leader more points than any other option in play. */
  public boolean leaderStandsOut() {
    List<RankedOption> options = inPlay();
    return options.size() == 1
        || (options.size() > 1
            && options.get(0).points().now().compareTo(options.get(1).points().now()) > 0);
  }

  public List<RankedOption> ruledOut() {
    return options.stream().filter(o -> o.availability() == Availability.RULED_OUT).toList();
  }

  public List<RankedOption> inPlay() {
    return options.stream().filter(o -> o.availability() != Availability.RULED_OUT).toList();
  }

  public Optional<RankedOption> option(String name) {
    return options.stream().filter(o -> o.name().equals(name)).findFirst();
  }
}
