package org.cotyla.finite;

/**
 * How much a search may do before it says that it is undecided. Counted in steps and not in time,
 * so that every machine gives the same answer.
 *
 * @param conflicts how many dead ends the solver may meet in one round
 * @param rounds how often it may be taught by arithmetic or look more closely
 * @param samples how many single cases are tried in each class
 */
public record Effort(int conflicts, int rounds, int samples) {

  /** Enough for a protocol of some hundred rows. */
  public static Effort usual() {
    return new Effort(200_000, 600, 24);
  }
}
