package org.cotyla.ledger;

/**
 * What was chosen in one ranking.
 *
 * @param ranking the ranking
 * @param option the option, or {@link #NOT_LISTED}
 * @param stood how the option stood in the recommendation
 */
public record Choice(String ranking, String option, Stood stood) {

  /** What is written when something was done that is none of the ranking's options. */
  public static final String NOT_LISTED = "not listed";

  /** How a chosen option stood. */
  public enum Stood {
    /** In first place, or level with it. */
    FIRST("first"),
    /** Behind the first, and not ruled out. */
    ACCEPTABLE("acceptable"),
    /** A row that hung on missing data might have ruled it out. */
    MAY_BE_RULED_OUT("may be ruled out"),
    RULED_OUT("ruled out"),
    NOT_LISTED("not listed");

    private final String word;

    Stood(String word) {
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
}
