package org.cotyla.explore;

import java.util.List;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finite.Effort;

/**
 * The fewest findings that would have to be others for a goal to be reached, over every case that
 * the protocol allows. Immutable.
 *
 * @param advice the answer to the case as it is
 * @param goal what is wanted
 * @param atMost how many findings might differ
 * @param sets the ways to reach it, the fewest findings first; no way holds another, and none with
 *     fewer findings than the first exists
 * @param end how far the list goes
 */
public record SmallestChange(
    Recommendation advice, Goal goal, int atMost, List<ChangeSet> sets, End end) {

  /** How far a list of ways goes. */
  public enum End {
    /** Proven: within the bound there is no way that does not hold one of these. */
    COMPLETE,
    /** There may be more ways; the first has the fewest findings all the same. */
    MORE,
    /** The search met its limit, so that there may be others, also smaller ones. */
    UNDECIDED
  }

  private static final int SETS_AT_MOST = 5;
  private static final Effort EFFORT = new Effort(20_000, 200, 24);

  public SmallestChange {
    sets = List.copyOf(sets);
  }

  /** Whether the goal is reached now, whatever the open data are. */
  public boolean isReached() {
    return goal.claim().truth(advice) == org.cotyla.value.Truth.TRUE;
  }

  /**
   * Looks for the smallest changes.
   *
   * @param atMost how many findings may differ
   */
  public static SmallestChange of(Engine engine, Recommendation advice, Goal goal, int atMost) {
    return new ChangeSearch(engine, advice, goal, EFFORT).run(atMost, SETS_AT_MOST);
  }
}
