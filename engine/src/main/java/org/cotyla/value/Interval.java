package org.cotyla.value;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of values between two ends, never empty by its own ends.
 *
 * @param low the lower end, or null when there is none
 * @param lowIncluded whether the lower end belongs to it
 * @param high the upper end, or null when there is none
 * @param highIncluded whether the upper end belongs to it
 */
public record Interval(
    @Nullable Value low, boolean lowIncluded, @Nullable Value high, boolean highIncluded) {

  public Interval {
    lowIncluded = low != null && lowIncluded;
    highIncluded = high != null && highIncluded;
  }

  public static Interval point(Value value) {
    return new Interval(value, true, value, true);
  }

  public static Interval everything() {
    return new Interval(null, false, null, false);
  }

  /** The interval of those ends, or nothing when no value can lie between them. */
  public static Optional<Interval> between(
      @Nullable Value low, boolean lowIncluded, @Nullable Value high, boolean highIncluded) {
    if (low != null && high != null) {
      int order = low.compareTo(high);
      if (order > 0 || (order == 0 && !(lowIncluded && highIncluded))) {
        return Optional.empty();
      }
    }
    return Optional.of(new Interval(low, lowIncluded, high, highIncluded));
  }

  public boolean isPoint() {
    return low != null && high != null && low.compareTo(high) == 0;
  }

  public boolean contains(Value value) {
    // A point is made of one value, so one comparison answers.
    return low == high && low != null
        ? low.compareTo(value) == 0
        : startsBefore(value) && endsAfter(value);
  }

  private boolean startsBefore(Value value) {
    if (low == null) {
      return true;
    }
    int order = low.compareTo(value);
    return order < 0 || (order == 0 && lowIncluded);
  }

  private boolean endsAfter(Value value) {
    if (high == null) {
      return true;
    }
    int order = value.compareTo(high);
    return order < 0 || (order == 0 && highIncluded);
  }

  boolean containsAll(Interval other) {
    return compareLow(this, other) <= 0 && compareHigh(this, other) >= 0;
  }

  Optional<Interval> intersect(Interval other) {
    Interval from = compareLow(this, other) >= 0 ? this : other;
    Interval to = compareHigh(this, other) <= 0 ? this : other;
    return between(from.low, from.lowIncluded, to.high, to.highIncluded);
  }

  boolean overlaps(Interval other) {
    return !endsBefore(other) && !other.endsBefore(this);
  }

  private boolean endsBefore(Interval other) {
    if (high == null || other.low == null) {
      return false;
    }
    int order = high.compareTo(other.low);
    return order < 0 || (order == 0 && !(highIncluded && other.lowIncluded));
  }

  /**
   * Whether no value lies between this interval's end and the other's start, so that both are one.
   */
  boolean reaches(Interval next) {
    if (high == null || next.low == null) {
      return true;
    }
    int order = high.compareTo(next.low);
    return order > 0 || (order == 0 && (highIncluded || next.lowIncluded));
  }

  static int compareLow(Interval a, Interval b) {
    if (a.low == null || b.low == null) {
      return a.low == b.low ? 0 : a.low == null ? -1 : 1;
    }
    int order = a.low.compareTo(b.low);
    return order != 0 ? order : Boolean.compare(b.lowIncluded, a.lowIncluded);
  }

  static int compareHigh(Interval a, Interval b) {
    if (a.high == null || b.high == null) {
      return a.high == b.high ? 0 : a.high == null ? 1 : -1;
    }
    int order = a.high.compareTo(b.high);
    return order != 0 ? order : Boolean.compare(a.highIncluded, b.highIncluded);
  }

  /** The interval as people write it: {@code 30}, {@code [15..30)}, {@code >= 15}, {@code -}. */
  public String plain() {
    if (low == null) {
      return high == null ? "-" : (highIncluded ? "<= " : "< ") + high.plain();
    }
    if (high == null) {
      return (lowIncluded ? ">= " : "> ") + low.plain();
    }
    if (isPoint()) {
      return low.plain();
    }
    return (lowIncluded ? "[" : "(")
        + low.plain()
        + ".."
        + high.plain()
        + (highIncluded ? "]" : ")");
  }
}
