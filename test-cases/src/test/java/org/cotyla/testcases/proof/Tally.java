package org.cotyla.testcases.proof;

import org.cotyla.finite.Answer;

/** How searches ended, and what trying case by case had found. */
final class Tally {

  private int foundBoth;
  private int foundBySearchOnly;
  private int impossible;
  private int undecided;
  private int undecidedThoughTrue;

  void count(Answer answer, boolean tried) {
    if (answer instanceof Answer.Found) {
      foundBoth += tried ? 1 : 0;
      foundBySearchOnly += tried ? 0 : 1;
    } else if (answer instanceof Answer.Impossible) {
      impossible++;
    } else {
      undecided++;
      undecidedThoughTrue += tried ? 1 : 0;
    }
  }

  int all() {
    return foundBoth + foundBySearchOnly + impossible + undecided;
  }

  int found() {
    return foundBoth + foundBySearchOnly;
  }

  int impossible() {
    return impossible;
  }

  double undecidedShare() {
    return undecided / (double) Math.max(1, all());
  }

  double foundBothShare() {
    return foundBoth / (double) Math.max(1, foundBoth + foundBySearchOnly + undecidedThoughTrue);
  }

  @Override
  public String toString() {
    return String.format(
        "%d claims: found by both %d, by the search only %d, proven impossible %d, undecided %d"
            + " (%.2f %%), of which true of a case %d",
        all(),
        foundBoth,
        foundBySearchOnly,
        impossible,
        undecided,
        100 * undecidedShare(),
        undecidedThoughTrue);
  }
}
