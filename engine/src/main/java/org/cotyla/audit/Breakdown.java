package org.cotyla.audit;

import java.util.List;

/**
 * The decisions of a ranking, parted by something.
 *
 * @param name the group's name when they are parted by a group, else empty
 * @param ranking the ranking, {@link AuditTotals#WHOLE} for the decision as a whole
 */
public record Breakdown(Dimension by, String name, String ranking, List<AuditLine> lines) {
  public Breakdown {
    lines = List.copyOf(lines);
  }
}
