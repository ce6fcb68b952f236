package org.cotyla.compare;

import java.util.Optional;
import org.cotyla.finite.Claim;

/**
 * One way in which a decision gives something else.
 *
 * @param claim true of the cases in which it does
 * @param kind what sort of difference it is
 * @param about the option, output or entry that it is about; empty for the result as a whole
 * @param was what the old protocol gives, in words, when that is one thing
 * @param now what the new protocol gives
 */
public record Difference(
    Claim claim, Kind kind, String about, Optional<String> was, Optional<String> now) {

  /** The sorts of difference. */
  public enum Kind {
    /** Another result. */
    RESULT("result"),
    /** A sum that is larger or smaller by so much. */
    SUM("sum"),
    /** An entry of a list that is new. */
    NEW_ENTRY("new entry"),
    /** An entry of a list that is gone. */
    GONE_ENTRY("gone entry"),
    /** An entry of a list in the place of another. */
    OTHER_ENTRY("other entry"),
    /** The entries of a list in another order. */
    ORDER("order"),
    /** An option gets more or fewer points. */
    POINTS("points"),
    /** An option is ruled out by the table that was not. */
    RULED_OUT("ruled out"),
    /** An option is no longer ruled out by the table. */
    NO_LONGER_RULED_OUT("no longer ruled out"),
    /** Rows of the table contradict each other that did not. */
    CONTRADICTION("contradiction"),
    /** Rows of the table contradicted each other, and do not any more. */
    NO_CONTRADICTION("no contradiction"),
    /** Rows of the table contradict each other in both protocols, and not in the same results. */
    OTHER_CONTRADICTION("other contradiction");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  /** The difference in words, to go after the findings in which it is there. */
  public String words() {
    String before = was.orElse("");
    String after = now.orElse("");
    return switch (kind) {
      case RESULT -> (about.isEmpty() ? "" : about + " ") + "was " + before + ", is now " + after;
      case SUM, POINTS -> about + ": " + after;
      case NEW_ENTRY -> "new: " + after;
      case GONE_ENTRY -> "gone: " + before;
      case OTHER_ENTRY -> "was: " + before + "; is now: " + after;
      case ORDER -> "the entries come in another order";
      case RULED_OUT -> about + " is now ruled out";
      case NO_LONGER_RULED_OUT -> about + " is no longer ruled out here";
      case CONTRADICTION -> "the rows now contradict each other";
      case NO_CONTRADICTION -> "the rows contradicted each other, and do not any more";
      case OTHER_CONTRADICTION ->
          before.isEmpty()
              ? "the rows contradict each other, and now one gives " + after
              : "the rows contradict each other, and none gives " + before + " any more";
    };
  }
}
