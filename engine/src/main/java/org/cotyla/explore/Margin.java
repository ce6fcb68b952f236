package org.cotyla.explore;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.cotyla.finding.Datum;
import org.cotyla.value.Value;

/**
 * How close a recorded number stands to a line that matters, with all else as it is.
 *
 * @param datum the number
 * @param below the nearest line below it, if any
 * @param above the nearest line above it, if any
 * @param nearest whether it is proven that nothing changes on this side of the lines
 * @param error whether the answer holds over the number's measurement error, when that is stated
 */
public record Margin(
    Datum datum,
    Optional<Line> below,
    Optional<Line> above,
    boolean nearest,
    Optional<Error> error) {

  /**
   * A value at which the answer changes.
   *
   * @param at the line
   * @param beyond whether the answer changes only beyond the line, and not on it
   * @param value a value at which it has changed: the line itself or one step beyond
   * @param changes what changes there
   */
  public record Line(Value at, boolean beyond, Value value, List<Change> changes) {
    public Line {
      changes = List.copyOf(changes);
    }
  }

  /**
   * A part of the answer and what it comes to on either side of a line; of rule-outs only the
   * options that are ruled out on one side and not on the other, none being blank; of several
   * outputs or entries only those that differ.
   */
  public record Change(Facet facet, String from, String to) {}

  /**
   * A number's measurement error, and what it means for the answer.
   *
   * @param size the error either way, in the field's unit
   * @param verdict whether the answer holds
   * @param changes the parts that do not hold, with what they come to at the first line
   */
  public record Error(BigDecimal size, Verdict verdict, List<Facet> changes) {
    public Error {
      changes = List.copyOf(changes);
    }
  }

  /** Whether an answer holds over a range. */
  public enum Verdict {
    /** The same over the whole range; proven. */
    HOLDS,
    /** Another within the range. */
    CHANGES,
    /** The search met its limit. */
    UNDECIDED
  }
}
