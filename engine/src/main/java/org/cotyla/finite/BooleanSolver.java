package org.cotyla.finite;

import java.math.BigInteger;

/**
 * Finds truth values for numbered unknowns under which everything holds that was demanded of them.
 *
 * <p>A literal is an unknown's number, or its negative for the opposite. Demands may be added
 * between two searches. Not thread-safe.
 */
interface BooleanSolver {

  /** How a search ended. */
  enum Verdict {
    FOUND,
    /** A proof that there is none. */
    IMPOSSIBLE,
    /** The limit was reached first. */
    UNDECIDED
  }

  /** A new unknown. */
  int unknown();

  /** Demands that at least one of the literals holds. */
  void atLeastOne(int... literals);

  /** Demands that the weights of the literals that hold add up to the degree or more. */
  void atLeast(int[] literals, BigInteger[] weights, BigInteger degree);

  /** Looks for truth values under which also the given literals hold. */
  Verdict solve(int... assumed);

  /** Of what was assumed in the last search, which was impossible, enough to make it so. */
  int[] conflicting();

  /** Whether the literal holds in what was found last. */
  boolean holds(int literal);
}
