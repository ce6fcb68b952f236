package org.cotyla.audit;

/**
 * How far a group of decisions agrees with what was advised.
 *
 * @param value what the group has in common
 * @param tally the counts
 * @param first how many chose what stood first
 * @param acceptable how many chose what stood first or an option behind it that was not ruled out
 * @param ruledOut how many chose what was ruled out
 */
public record AuditLine(
    String value, Tally tally, Proportion first, Proportion acceptable, Proportion ruledOut) {

  static AuditLine of(String value, Tally tally) {
    return new AuditLine(
        value,
        tally,
        Proportion.of(tally.first(), tally.judged()),
        Proportion.of(tally.concordant(), tally.judged()),
        Proportion.of(tally.ruledOut(), tally.judged()));
  }
}
