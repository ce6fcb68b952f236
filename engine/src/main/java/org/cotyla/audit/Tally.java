package org.cotyla.audit;

import java.io.Serializable;
import java.util.Optional;

/**
 * How many decisions came to each verdict.
 *
 * @param unjudged how many could not be judged, since nothing had been advised
 */
public record Tally(long first, long acceptable, long ruledOut, long notRanked, long unjudged)
    implements Serializable {

  public static final Tally NONE = new Tally(0, 0, 0, 0, 0);

  static Tally of(Optional<Verdict> verdict) {
    if (verdict.isEmpty()) {
      return new Tally(0, 0, 0, 0, 1);
    }
    return switch (verdict.get()) {
      case FIRST -> new Tally(1, 0, 0, 0, 0);
      case ACCEPTABLE -> new Tally(0, 1, 0, 0, 0);
      case RULED_OUT -> new Tally(0, 0, 1, 0, 0);
      case NOT_RANKED -> new Tally(0, 0, 0, 1, 0);
    };
  }

  public Tally plus(Tally other) {
    return new Tally(
        first + other.first,
        acceptable + other.acceptable,
        ruledOut + other.ruledOut,
        notRanked + other.notRanked,
        unjudged + other.unjudged);
  }

  /** How many were judged. */
  public long judged() {
    return first + acceptable + ruledOut + notRanked;
  }

  public long all() {
    return judged() + unjudged;
  }

  /** How many chose what stood first, or an option behind it that was not ruled out. */
  public long concordant() {
    return first + acceptable;
  }

  /** How many did not choose what stood first. */
  public long departed() {
    return judged() - first;
  }
}
