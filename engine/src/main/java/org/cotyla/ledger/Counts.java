package org.cotyla.ledger;

import java.util.Locale;

/** How an outcome counts in a reckoning over time. */
public enum Counts {
  /** Something that happened, which may happen again. */
  EVENT,
  /** The last that is known; nothing can be observed after it. */
  CENSORING;

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  @Override
  public String toString() {
    return word();
  }
}
