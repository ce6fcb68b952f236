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
  /** The option that stood first, within its ranking. */
  ADVISED("advised first"),
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
  MISSING("missing data"),
  /** A datum that was missing; of the decision as a whole only. */
  DATUM("missing datum"),
  /** A datum that was missing and might have changed a first place. */
  DECISIVE_DATUM("missing datum that might have changed a first place");

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
