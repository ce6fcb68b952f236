package org.cotyla.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Datum;
import org.cotyla.protocol.DecisionTable;

/**
 * What differs between two answers of one protocol. Immutable.
 *
 * @param before the one answer
 * @param after the other
 * @param findings the findings that are known differently, in the order of the protocol
 * @param rankings every ranking, in the order of the workbook
 * @param decisions the decisions that come to something else or to the same by other rows, in the
 *     order of the workbook; decisions that vote show in the rankings
 */
public record Comparison(
    Recommendation before,
    Recommendation after,
    List<FindingChange> findings,
    List<RankingChange> rankings,
    List<DecisionChange> decisions) {

  public Comparison {
    findings = List.copyOf(findings);
    rankings = List.copyOf(rankings);
    decisions = List.copyOf(decisions);
  }

  /**
   * Compares two answers.
   *
   * @throws IllegalArgumentException when they are of two protocols
   */
  public static Comparison of(Recommendation before, Recommendation after) {
    if (!before.protocolDigest().equals(after.protocolDigest())) {
      throw new IllegalArgumentException("the two answers are of two protocols");
    }
    return new Comparison(
        before, after, findings(before, after), rankings(before, after), decisions(before, after));
  }

  public Optional<DecisionChange> decision(String name) {
    return decisions.stream().filter(one -> one.table().name().equals(name)).findFirst();
  }

  public Optional<RankingChange> ranking(String name) {
    return rankings.stream().filter(one -> one.name().equals(name)).findFirst();
  }

  /** Whether any decision comes to something else or any option stands otherwise. */
  public boolean changesAnything() {
    return decisions.stream().anyMatch(DecisionChange::changesResult)
        || rankings.stream().anyMatch(ranking -> !ranking.options().isEmpty());
  }

  private static List<FindingChange> findings(Recommendation before, Recommendation after) {
    List<FindingChange> changes = new ArrayList<>();
    for (Datum now : after.findings().data()) {
      before
          .findings()
          .datum(now.field().name())
          .filter(was -> FindingChange.isKnown(was) || FindingChange.isKnown(now))
          .filter(was -> !was.value().equals(now.value()))
          .ifPresent(was -> changes.add(new FindingChange(was, now)));
    }
    return changes;
  }

  private static List<RankingChange> rankings(Recommendation before, Recommendation after) {
    List<RankingChange> changes = new ArrayList<>();
    for (RankingResult now : after.rankings()) {
      before
          .ranking(now.ranking().name())
          .ifPresent(was -> changes.add(RankingChange.between(was, now)));
    }
    return changes;
  }

  private static List<DecisionChange> decisions(Recommendation before, Recommendation after) {
    List<DecisionChange> changes = new ArrayList<>();
    for (DecisionTable table : after.protocol().decisions()) {
      Optional<DecisionResult> was = before.decision(table.name());
      Optional<DecisionResult> now = after.decision(table.name());
      if (!table.votes() && was.isPresent() && now.isPresent()) {
        DecisionChange.between(was.get(), now.get()).ifPresent(changes::add);
      }
    }
    return changes;
  }
}
