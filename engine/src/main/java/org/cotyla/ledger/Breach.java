package org.cotyla.ledger;

/**
 * Something that does not hold in a ledger.
 *
 * @param sequence the entry, by its number; 0 for the ledger as a whole
 * @param how in one word what happened to it
 * @param what one line that says how that shows
 */
public record Breach(long sequence, How how, String what) {

  /** What happened to an entry. */
  public enum How {
    ALTERED,
    MISSING,
    INSERTED,
    REORDERED,
    /** The end is not there. */
    TRUNCATED;

    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }
}
