package org.cotyla.compare;

import java.util.List;

/**
 * What becomes of one decision or option of a case under the new protocol.
 *
 * @param kind what shifts
 * @param about the decision, ranking or option by its name
 * @param was what the old protocol gives
 * @param now what the new protocol gives
 * @param oldRows the ids of the rows that make it so in the old protocol and not in the new
 * @param newRows the ids of the rows that make it so in the new protocol and not in the old
 */
public record Shift(
    Kind kind, String about, String was, String now, List<String> oldRows, List<String> newRows) {

  /** What can shift. */
  public enum Kind {
    DECISION("decision"),
    FIRST("first"),
    RULED_OUT("ruled out"),
    NO_LONGER_RULED_OUT("no longer ruled out");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  public Shift {
    oldRows = List.copyOf(oldRows);
    newRows = List.copyOf(newRows);
  }
}
