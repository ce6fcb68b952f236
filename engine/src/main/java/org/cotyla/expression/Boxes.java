package org.cotyla.expression;

import java.util.ArrayList;
import java.util.List;
import org.cotyla.value.Interval;
import org.cotyla.value.ValueSet;

/** Combinations of what several arguments can be. */
final class Boxes {

  private Boxes() {}

  /**
   * Every combination of the sets' parts; one combination of their hulls when there would be more
   * than the limit. No set may be empty.
   */
  static List<List<Interval>> of(List<ValueSet> sets, int atMost) {
    long combinations = 1;
    for (ValueSet set : sets) {
      combinations = combinations > atMost ? combinations : combinations * set.parts().size();
    }
    return combinations > atMost
        ? List.of(sets.stream().map(ValueSet::hull).toList())
        : corners(sets.stream().map(ValueSet::parts).toList());
  }

  /** Every way to choose one of each. */
  static <T> List<List<T>> corners(List<List<T>> choices) {
    List<List<T>> chosen = List.of(List.of());
    for (List<T> next : choices) {
      List<List<T>> longer = new ArrayList<>();
      for (List<T> start : chosen) {
        for (T one : next) {
          List<T> all = new ArrayList<>(start);
          all.add(one);
          longer.add(all);
        }
      }
      chosen = longer;
    }
    return chosen;
  }
}
