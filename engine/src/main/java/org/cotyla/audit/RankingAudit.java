package org.cotyla.audit;

import java.util.List;

/**
 * How far decisions agree with one ranking.
 *
 * @param ranking the ranking, {@link AuditTotals#WHOLE} for the decision as a whole
 * @param all all decisions
 * @param byMonth the share that chose what stood first, month by month
 * @param breakdowns the decisions parted by month, role and so on
 * @param rows the rows departed from, the most frequent first
 * @param reasons the reasons given for departures, the most frequent first
 */
public record RankingAudit(
    String ranking,
    AuditLine all,
    ControlChart byMonth,
    List<Breakdown> breakdowns,
    List<RowDepartures> rows,
    List<NamedCount> reasons) {
  public RankingAudit {
    breakdowns = List.copyOf(breakdowns);
    rows = List.copyOf(rows);
    reasons = List.copyOf(reasons);
  }

  /** Whether it is about the decision as a whole. */
  public boolean isWhole() {
    return ranking.equals(AuditTotals.WHOLE);
  }
}
