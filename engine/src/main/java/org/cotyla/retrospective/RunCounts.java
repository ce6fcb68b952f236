package org.cotyla.retrospective;

import java.io.Serializable;

/**
 * How many rows there were, and what became of them: read is judged and set aside together.
 *
 * @param read rows that are not blank, without the headings
 * @param judged rows that were judged
 * @param setAside rows that were not
 * @param reasons lines of the file of rows set aside; a row may have several faults
 */
public record RunCounts(long read, long judged, long setAside, long reasons)
    implements Serializable {

  static final RunCounts NONE = new RunCounts(0, 0, 0, 0);

  public RunCounts {
    if (read != judged + setAside) {
      throw new IllegalStateException("rows read are not the rows judged and set aside");
    }
  }

  /** The counts of both. */
  public RunCounts plus(RunCounts other) {
    return new RunCounts(
        read + other.read,
        judged + other.judged,
        setAside + other.setAside,
        reasons + other.reasons);
  }

  RunCounts plus(Tallied part) {
    return new RunCounts(
        read + part.rows(),
        judged + part.judged(),
        setAside + part.setAside().stream().mapToLong(SetAside::row).distinct().count(),
        reasons + part.setAside().size());
  }
}
