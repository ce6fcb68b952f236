package org.cotyla.protocol;

import java.util.List;
import org.cotyla.issue.CellRef;

/**
 * One entry of a protocol's history.
 *
 * @param version the version that it made
 * @param date its day, as written
 * @param authorRole who made it, never a person's name
 * @param what what changed
 * @param why why
 * @param retiredIds ids of rows that it took away, which no row may have again
 * @param at its row
 */
public record Change(
    String version,
    String date,
    String authorRole,
    String what,
    String why,
    List<String> retiredIds,
    CellRef at) {

  public Change {
    retiredIds = List.copyOf(retiredIds);
  }
}
