package org.cotyla.compare;

import java.util.Optional;
import org.cotyla.issue.CellRef;

/**
 * Something that is written otherwise in the new protocol. What it changes is another question.
 *
 * @param kind what was done to what
 * @param subject the thing by its name or id
 * @param part which part of it, such as an input's name; empty for the thing as a whole
 * @param was what stood there; empty when nothing did
 * @param now what stands there
 * @param before the cell in the old workbook
 * @param after the cell in the new workbook
 */
public record Edit(
    Kind kind,
    String subject,
    String part,
    String was,
    String now,
    Optional<CellRef> before,
    Optional<CellRef> after) {

  /** The sorts of edit. */
  public enum Kind {
    PROTOCOL("protocol changed", false),
    STAGES("stages changed", true),
    FIELD_ADDED("field added", true),
    FIELD_REMOVED("field removed", true),
    /** Which values a case may state. */
    FIELD_CHANGED("field changed", true),
    /** The same word means something else, so the two cannot be compared by it. */
    FIELD_INCOMPARABLE("field cannot be compared", true),
    OPTION_ADDED("option added", true),
    OPTION_REMOVED("option removed", true),
    OPTION_MOVED("option moved", false),
    OPTION_CHANGED("option changed", false),
    CONSTANT_CHANGED("constant changed", false),
    CALCULATION_ADDED("calculation added", false),
    CALCULATION_REMOVED("calculation removed", false),
    CALCULATION_CHANGED("calculation changed", false),
    DECISION_ADDED("decision added", true),
    DECISION_REMOVED("decision removed", true),
    DECISION_RENAMED("decision renamed", false),
    DECISION_CHANGED("decision changed", false),
    ROW_ADDED("row added", false),
    ROW_REMOVED("row removed", false),
    ROW_CHANGED("row changed", false),
    ROW_RENAMED("row renamed", false),
    ROW_MOVED("row moved", false),
    SAFEGUARD_ADDED("safeguard added", false),
    SAFEGUARD_REMOVED("safeguard removed", false),
    SAFEGUARD_CHANGED("safeguard changed", false),
    REASON_ONLY("reason only", false);

    private final String word;
    private final boolean changesMeaning;

    Kind(String word, boolean changesMeaning) {
      this.word = word;
      this.changesMeaning = changesMeaning;
    }

    public String word() {
      return word;
    }

    /** Whether it is a difference by itself, whatever the decisions come to. */
    public boolean changesMeaning() {
      return changesMeaning;
    }
  }

  /** In words. */
  public String words() {
    String what = subject + (part.isEmpty() ? "" : ", " + part);
    if (was.isEmpty() && now.isEmpty()) {
      return what;
    }
    if (was.isEmpty()) {
      return what + ": " + now;
    }
    return what + ": was " + was + (now.isEmpty() ? "" : ", is now " + now);
  }
}
