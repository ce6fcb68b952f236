package org.cotyla.finite;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;
import org.jspecify.annotations.Nullable;

/**
 * Knows where values follow each other without anything in between: there is no date between two
 * days, and no text before the empty one.
 */
final class Steps {

  private Steps() {}

  /** The same values, in intervals whose ends are values where that can be; none that is empty. */
  static ValueSet within(ValueSet values) {
    if (values.isFinite() || (values.type() != ValueType.DATE && values.type() != ValueType.TEXT)) {
      return values;
    }
    List<Interval> parts = new ArrayList<>();
    for (Interval part : values.parts()) {
      (values.type() == ValueType.DATE ? days(part) : texts(part)).ifPresent(parts::add);
    }
    return ValueSet.ofIntervals(values.type(), parts);
  }

  private static Optional<Interval> days(Interval part) {
    return Interval.between(
        included(part.low(), part.lowIncluded(), 1),
        true,
        included(part.high(), part.highIncluded(), -1),
        true);
  }

  private static @Nullable Value included(@Nullable Value end, boolean included, int step) {
    return end instanceof Value.DateValue day && !included
        ? Value.of(day.date().plusDays(step))
        : end;
  }

  private static Optional<Interval> texts(Interval part) {
    boolean beforeAll =
        part.low() == null
            && !part.highIncluded()
            && part.high() instanceof Value.TextValue high
            && high.text().isEmpty();
    return beforeAll ? Optional.empty() : Optional.of(part);
  }
}
