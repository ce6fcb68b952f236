package org.cotyla.compare;

/** What is known of whether a decision or ranking gives the same in two protocols. */
public enum Verdict {
  /** It says the same of the same, so that nothing had to be searched. */
  SAME("same"),
  /** It is written otherwise, and no case in which it differs is possible. */
  PROVEN_SAME("proven same"),
  /** There is a case in which it differs. */
  DIFFERS("differs"),
  /** Neither a case nor a proof was found within the limit. */
  UNDECIDED("undecided"),
  /** The two cannot be asked the same question. */
  INCOMPARABLE("cannot be compared"),
  /** Only the new protocol has it. */
  ADDED("added"),
  /** Only the old protocol has it. */
  REMOVED("removed");

  private final String word;

  Verdict(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  public boolean isSame() {
    return this == SAME || this == PROVEN_SAME;
  }
}
