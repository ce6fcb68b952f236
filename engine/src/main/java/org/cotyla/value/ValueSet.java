package org.cotyla.value;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A set of values of one type, held as the fewest disjoint intervals in ascending order. Immutable.
 *
 * <p>Two sets are equal when they hold the same intervals. Texts and yes/no are held as points.
 */
public final class ValueSet {

  private final ValueType type;
  private final List<Interval> parts;
  private final @Nullable Value single;

  /** Sets are compared again and again. */
  private final int hash;

  private ValueSet(ValueType type, List<Interval> parts) {
    this.type = type;
    this.parts = List.copyOf(parts);
    this.single = parts.size() == 1 && parts.get(0).isPoint() ? parts.get(0).low() : null;
    this.hash = 31 * type.ordinal() + this.parts.hashCode();
  }

  public static ValueSet of(Value value) {
    return new ValueSet(value.type(), List.of(Interval.point(value)));
  }

  public static ValueSet of(ValueType type, Collection<? extends Value> values) {
    return ofIntervals(type, values.stream().map(Interval::point).toList());
  }

  public static ValueSet ofIntervals(ValueType type, Collection<Interval> intervals) {
    List<Interval> sorted = new ArrayList<>(intervals);
    sorted.sort(Interval::compareLow);
    List<Interval> merged = new ArrayList<>(sorted.size());
    for (Interval next : sorted) {
      int last = merged.size() - 1;
      if (last >= 0 && merged.get(last).reaches(next)) {
        Interval before = merged.get(last);
        Interval longer = Interval.compareHigh(before, next) >= 0 ? before : next;
        merged.set(
            last,
            new Interval(before.low(), before.lowIncluded(), longer.high(), longer.highIncluded()));
      } else {
        merged.add(next);
      }
    }
    return new ValueSet(type, merged);
  }

  public static ValueSet none(ValueType type) {
    return new ValueSet(type, List.of());
  }

  /** Every value of the type. */
  public static ValueSet all(ValueType type) {
    return type == ValueType.YES_NO
        ? of(type, List.of(Value.of(false), Value.of(true)))
        : new ValueSet(type, List.of(Interval.everything()));
  }

  public static ValueSet between(
      ValueType type,
      @Nullable Value low,
      boolean lowIncluded,
      @Nullable Value high,
      boolean highIncluded) {
    return new ValueSet(
        type,
        Interval.between(low, lowIncluded, high, highIncluded).map(List::of).orElse(List.of()));
  }

  public ValueType type() {
    return type;
  }

  public List<Interval> parts() {
    return parts;
  }

  public boolean isEmpty() {
    return parts.isEmpty();
  }

  /** The one value of the set, when it has exactly one. */
  public Optional<Value> single() {
    return Optional.ofNullable(single);
  }

  /** Whether the set is a finite list of values. */
  public boolean isFinite() {
    return parts.stream().allMatch(Interval::isPoint);
  }

  /** The values of a finite set in ascending order. */
  public List<Value> values() {
    return parts.stream()
        .map(part -> Optional.ofNullable(part.low()).filter(low -> part.isPoint()).orElseThrow())
        .toList();
  }

  public boolean contains(Value value) {
    if (value.type() != type) {
      return false;
    }
    for (Interval part : parts) {
      if (part.contains(value)) {
        return true;
      }
    }
    return false;
  }

  public boolean containsAll(ValueSet other) {
    if (other.single != null) {
      return contains(other.single);
    }
    if (!other.isEmpty() && type != other.type) {
      return false;
    }
    for (Interval theirs : other.parts) {
      if (!holds(theirs)) {
        return false;
      }
    }
    return true;
  }

  private boolean holds(Interval theirs) {
    for (Interval ours : parts) {
      if (ours.containsAll(theirs)) {
        return true;
      }
    }
    return false;
  }

  public boolean intersects(ValueSet other) {
    if (other.single != null) {
      return contains(other.single);
    }
    if (type != other.type) {
      return false;
    }
    for (Interval ours : parts) {
      for (Interval theirs : other.parts) {
        if (ours.overlaps(theirs)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether this test region holds for all, none or some of the given values. */
  public Truth truthFor(ValueSet given) {
    if (given.single != null) {
      return Truth.of(contains(given.single));
    }
    if (containsAll(given)) {
      return Truth.TRUE;
    }
    return intersects(given) ? Truth.OPEN : Truth.FALSE;
  }

  public ValueSet union(ValueSet other) {
    if (other.isEmpty() || equals(other)) {
      return this;
    }
    if (isEmpty()) {
      return other;
    }
    List<Interval> both = new ArrayList<>(parts);
    both.addAll(other.parts);
    return ofIntervals(type, both);
  }

  public ValueSet intersect(ValueSet other) {
    List<Interval> common = new ArrayList<>();
    for (Interval ours : parts) {
      for (Interval theirs : other.parts) {
        ours.intersect(theirs).ifPresent(common::add);
      }
    }
    return ofIntervals(type, common);
  }

  /** Every value of the type that is not in the set. */
  public ValueSet complement() {
    if (type == ValueType.YES_NO) {
      return of(type, all(type).values().stream().filter(answer -> !contains(answer)).toList());
    }
    List<Interval> gaps = new ArrayList<>();
    Value from = null;
    boolean fromIncluded = false;
    for (Interval part : parts) {
      if (part.low() != null) {
        Interval.between(from, fromIncluded, part.low(), !part.lowIncluded()).ifPresent(gaps::add);
      }
      from = part.high();
      fromIncluded = !part.highIncluded();
      if (from == null) {
        return ofIntervals(type, gaps);
      }
    }
    gaps.add(new Interval(from, fromIncluded, null, false));
    return ofIntervals(type, gaps);
  }

  /** The smallest single interval around the set; the set must not be empty. */
  public Interval hull() {
    Interval first = parts.get(0);
    Interval last = parts.get(parts.size() - 1);
    return new Interval(first.low(), first.lowIncluded(), last.high(), last.highIncluded());
  }

  /**
   * The set as people write it, in ascending order: {@code 2A, 2B}, {@code [0..200]}, {@code -}.
   */
  public String plain() {
    return parts.stream().map(Interval::plain).collect(Collectors.joining(", "));
  }

  /** The set as people write it, its points in the given order. */
  public String plain(Comparator<Value> order) {
    if (!isFinite()) {
      return plain();
    }
    return values().stream().sorted(order).map(Value::plain).collect(Collectors.joining(", "));
  }

  @Override
  public boolean equals(Object other) {
    return this == other
        || (other instanceof ValueSet that
            && hash == that.hash
            && type == that.type
            && parts.equals(that.parts));
  }

  @Override
  public int hashCode() {
    return hash;
  }

  @Override
  public String toString() {
    return plain();
  }
}
