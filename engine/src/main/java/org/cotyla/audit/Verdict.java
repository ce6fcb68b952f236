package org.cotyla.audit;

/** How what was chosen stood in what was advised. */
public enum Verdict {
  /** In first place, or level with it. */
  FIRST("first"),
  /** Behind the first, and not ruled out by what was known. */
  ACCEPTABLE("acceptable"),
  RULED_OUT("ruled out"),
  /** None of the options of the ranking. */
  NOT_RANKED("not ranked");

  private final String word;

  Verdict(String word) {
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
