package org.cotyla.explore;

import java.util.List;
import org.cotyla.evaluate.Recommendation;

/**
 * Findings that would have to be others, together.
 *
 * @param moves the findings that differ from what is known, in the order of the protocol; none when
 *     what is known already allows the goal
 * @param onceRecorded open data and the values that they have to turn out to have; none of them can
 *     be left open
 * @param after the answer to the case with all of these applied
 */
public record ChangeSet(List<Move> moves, List<Move> onceRecorded, Recommendation after) {

  public ChangeSet {
    moves = List.copyOf(moves);
    onceRecorded = List.copyOf(onceRecorded);
  }
}
