package org.cotyla.ledger;

import java.util.List;
import java.util.Optional;
import org.cotyla.evaluate.RankedOption.Availability;

/**
 * A recommendation in short: what an audit asks for without reading the whole.
 *
 * @param rankings every ranking in the order of the protocol
 * @param results what the decisions that are shown in full came to
 * @param missing data that were missing or partly known
 * @param faults how many contradictions of the protocol the case met
 */
public record Advice(
    List<Ranked> rankings, List<Result> results, List<Missing> missing, int faults) {

  public Advice {
    rankings = List.copyOf(rankings);
    results = List.copyOf(results);
    missing = List.copyOf(missing);
  }

  public Optional<Ranked> ranking(String name) {
    return rankings.stream().filter(ranked -> ranked.ranking().equals(name)).findFirst();
  }

  public Optional<Result> result(String field) {
    return results.stream().filter(result -> result.field().equals(field)).findFirst();
  }

  /**
   * A ranking.
   *
   * @param firstIsCertain whether the first place is the same whatever the open data are
   * @param options those available by their points, then those ruled out
   */
  public record Ranked(String ranking, boolean firstIsCertain, List<OptionStanding> options) {
    public Ranked {
      options = List.copyOf(options);
    }

    public Optional<OptionStanding> option(String name) {
      return options.stream().filter(option -> option.option().equals(name)).findFirst();
    }
  }

  /**
   * An option and how it stood.
   *
   * @param stood first, acceptable, may be ruled out, or ruled out
   * @param rows the ids of the rows that speak for it, against it or rule it out
   */
  public record OptionStanding(
      String option,
      int place,
      Choice.Stood stood,
      Availability availability,
      boolean canBeFirst,
      List<RowVote> rows) {
    public OptionStanding {
      rows = List.copyOf(rows);
    }
  }

  /** A row that speaks on an option: its id and its effect ({@code favour} and so on). */
  public record RowVote(String row, String effect) {}

  /** What a derived field can be, as text. */
  public record Result(String field, List<String> possible) {
    public Result {
      possible = List.copyOf(possible);
    }
  }

  /** A datum that was missing or partly known, and whether the first places may hang on it. */
  public record Missing(String field, boolean mayChangeFirst) {}
}
