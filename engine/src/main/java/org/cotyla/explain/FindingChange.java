package org.cotyla.explain;

import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.protocol.Field;

/**
 * A finding that is known differently in two cases.
 *
 * @param before what the one case knows
 * @param after what the other knows of the same field
 */
public record FindingChange(Datum before, Datum after) {

  /** How the two differ. */
  public enum Kind {
    /** It was not known before, and is now. */
    FOUND("found"),
    /** It was known before, and now otherwise. */
    ALTERED("altered"),
    /** It was known before, and is not now. */
    WITHDRAWN("withdrawn");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  public Field field() {
    return after.field();
  }

  public Kind kind() {
    if (!isKnown(before)) {
      return Kind.FOUND;
    }
    return isKnown(after) ? Kind.ALTERED : Kind.WITHDRAWN;
  }

  /** Whether the case says anything of the field. */
  static boolean isKnown(Datum datum) {
    return datum.knowledge() == Knowledge.RECORDED || datum.knowledge() == Knowledge.PARTLY;
  }
}
