package org.cotyla.evaluate;

/** What became of a row that fired, by its table's hit policy. */
public enum Standing {
  /** It is part of the result whatever the open data are. */
  DECIDES("decides"),
  /** It may be part of the result, depending on open data. */
  MAY_DECIDE("may decide"),
  /** It matched, but another row goes before it. */
  SET_ASIDE("set aside");

  private final String word;

  Standing(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
