package org.cotyla.finite;

import java.util.List;
import org.cotyla.expression.Symbol;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/**
 * Cuts classes of numbers finer where arithmetic is not settled by those that there are. Not
 * thread-safe.
 */
final class CloserLook {

  /** Of its whole range: what is narrower is cut no more. */
  private static final double NARROWEST = 1e-9;

  private final List<ProtocolEncoding> sides;
  private final List<BoxWalk> walks;
  private final List<GivenSide> givens;

  /**
   * @param sides the protocols; sides may still be added, to all three lists
   */
  CloserLook(List<ProtocolEncoding> sides, List<BoxWalk> walks, List<GivenSide> givens) {
    this.sides = sides;
    this.walks = walks;
    this.givens = givens;
  }

  /** Cuts the widest class on which an unsettled result hangs; says whether there was one. */
  boolean cut() {
    Alternatives widest = null;
    double width = 0;
    for (int side = 0; side < sides.size(); side++) {
      for (Dependent dependent : walks.get(side).unsettled()) {
        for (Symbol symbol : walks.get(side).sources(dependent)) {
          Alternatives classes = sides.get(side).classes(symbol);
          boolean cuts = classes.isExact() || isGiven(classes);
          double relative = cuts ? relativeWidth(classes) : 0;
          if (relative > width) {
            width = relative;
            widest = classes;
          }
        }
      }
    }
    if (widest == null || width < NARROWEST) {
      return false;
    }
    int place = widest.found();
    ValueSet values = widest.leaves().get(place).values().values();
    Value middle = Representative.of(values);
    ValueSet below = values.intersect(ValueSet.between(values.type(), null, false, middle, true));
    if (below.equals(values)) {
      below = values.intersect(ValueSet.between(values.type(), null, false, middle, false));
    }
    if (below.isEmpty()) {
      return false;
    }
    widest.cut(place, below);
    return true;
  }

  private boolean isGiven(Alternatives classes) {
    return givens.stream().anyMatch(side -> side.used().containsValue(classes));
  }

  private static double relativeWidth(Alternatives classes) {
    PossibleValues leaf = classes.leaves().get(classes.found()).values();
    double all = width(classes.all().values());
    return leaf.isNothing() || all == 0 ? 0 : width(leaf.values()) / all;
  }

  private static double width(ValueSet values) {
    if (values.isEmpty()) {
      return 0;
    }
    Interval hull = values.hull();
    return hull.low() instanceof Value.NumberValue low
            && hull.high() instanceof Value.NumberValue high
        ? high.number().subtract(low.number()).doubleValue()
        : hull.isPoint() || values.type() != ValueType.NUMBER ? 0 : 1e12;
  }
}
