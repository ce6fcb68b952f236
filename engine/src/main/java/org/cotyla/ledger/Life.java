package org.cotyla.ledger;

import java.util.Locale;

/** Where a protocol is in its life on a given day, by the entries of a ledger. */
public enum Life {
  /** It has not been approved by two. */
  DRAFT,
  /** It is approved, and its day has not come. */
  APPROVED,
  IN_FORCE,
  /** A later release of the same protocol took its place. */
  SUPERSEDED,
  WITHDRAWN;

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  @Override
  public String toString() {
    return word();
  }
}
