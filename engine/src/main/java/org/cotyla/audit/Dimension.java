package org.cotyla.audit;

/** By what decisions are counted. */
public enum Dimension {
  /** All together; its one value is {@link AuditTotals#ALL}. */
  ALL("all"),
  /** The month of the decision, as year and month. */
  MONTH("month"),
  ROLE("role"),
  /** The option that was chosen, within its ranking. */
  OPTION("option"),
  /** What a decision that the protocol shows in full came to; its name is the decision's. */
  GROUP("group"),
  PROTOCOL("protocol"),
  /** Where the protocol was in its life. */
  STANDING("standing"),
  /** The reason given, of departures only. */
  REASON("reason"),
  /** A row that spoke for the first or against the chosen option, within its ranking. */
  ROW("row"),
  /** The reasons given for departures from a row; its name is the row's id. */
  ROW_REASON("reason by row"),
  /** How many data were missing. */
  MISSING("missing data");

  private final String word;

  Dimension(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  @Override
  public String toString() {
    return word;
  }
}
