package org.cotyla.explore;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Datum;
import org.cotyla.protocol.Field;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;
import org.jspecify.annotations.Nullable;

/**
 * Walks from one recorded number to either side, class by class. One evaluation over a whole class
 * proves that the answer is the same in it; where formulas cut a class, it is halved.
 */
final class MarginSearch {

  private static final int HALVINGS_AT_MOST = 80;

  /** Up to about 10^12 of the field's unit. */
  private static final int DOUBLINGS_AT_MOST = 40;

  private final Engine engine;
  private final Recommendation advice;
  private final Field field;
  private final BigDecimal recorded;
  private final FieldClasses classes;
  private final Datum datum;
  private final Map<Facet, String> now = new LinkedHashMap<>();
  private boolean nearest = true;

  MarginSearch(Engine engine, Recommendation advice, Datum datum, FieldClasses classes) {
    this.engine = engine;
    this.advice = advice;
    this.datum = datum;
    this.field = datum.field();
    this.classes = classes;
    this.recorded = number(datum.value().single().orElseThrow());
    // The same choice of results over a class proves nothing; the same single result does.
    Facet.of(engine.protocol()).stream()
        .filter(facet -> FacetResults.of(advice, facet).isCertain())
        .forEach(facet -> now.put(facet, FacetWords.of(advice, facet)));
  }

  /** Nothing when no value that the field may have changes anything. */
  Optional<Margin> margin() {
    if (changes(field.allowed()).isEmpty()) {
      return Optional.empty();
    }
    Optional<Margin.Line> below = line(false);
    Optional<Margin.Line> above = line(true);
    return below.isEmpty() && above.isEmpty() && nearest
        ? Optional.empty()
        : Optional.of(
            new Margin(datum, below, above, nearest, field.measurementError().map(this::error)));
  }

  /** The parts that are not the same all over these values. */
  private List<Margin.Change> changes(ValueSet values) {
    Recommendation answer = engine.decide(Changed.with(advice.findings(), field, values));
    List<Margin.Change> changes = new ArrayList<>();
    now.forEach(
        (facet, from) -> {
          String to = FacetWords.of(answer, facet);
          if (!to.equals(from)) {
            changes.add(FacetWords.change(facet, from, to));
          }
        });
    return changes;
  }

  private ValueSet side(boolean above) {
    Value here = Value.of(recorded);
    ValueSet side =
        above
            ? ValueSet.between(ValueType.NUMBER, here, false, null, false)
            : ValueSet.between(ValueType.NUMBER, null, false, here, false);
    return field.allowed().intersect(side);
  }

  private Optional<Margin.Line> line(boolean above) {
    List<ValueSet> pieces = new ArrayList<>(classes.of(field, side(above)));
    if (!above) {
      Collections.reverse(pieces);
    }
    for (ValueSet piece : pieces) {
      Optional<Margin.Line> line = changes(piece).isEmpty() ? Optional.empty() : in(piece, above);
      if (line.isPresent()) {
        return line;
      }
    }
    return Optional.empty();
  }

  /** The line in a class that does not come to the same all over. */
  private Optional<Margin.Line> in(ValueSet piece, boolean above) {
    Interval hull = piece.hull();
    BigDecimal near = number(above ? hull.low() : hull.high());
    boolean onLine = above ? hull.lowIncluded() : hull.highIncluded();
    int decimals = Math.max(scale(near), scale(recorded));
    Optional<Value> first =
        onLine ? Optional.of(Value.of(near)) : JustBeyond.line(near, piece, above, decimals);
    List<Margin.Change> there = first.map(value -> changes(ValueSet.of(value))).orElse(List.of());
    if (first.isPresent() && !there.isEmpty()) {
      return Optional.of(new Margin.Line(Value.of(near), !onLine, first.get(), there));
    }
    Value far = above ? hull.high() : hull.low();
    if (far != null) {
      return halved(piece, near, number(far), above, decimals + 1);
    }
    Optional<Margin.Line> line =
        stretch(piece, near, above).flatMap(end -> halved(piece, near, end, above, decimals + 1));
    // Farther out the class has no end up to which a proof could be tried.
    nearest &= line.isPresent();
    return line;
  }

  /** In a class without an end: so far from the near end that the answer may change in between. */
  private Optional<BigDecimal> stretch(ValueSet piece, BigDecimal near, boolean above) {
    BigDecimal length = BigDecimal.ONE;
    for (int i = 0; i < DOUBLINGS_AT_MOST; i++) {
      BigDecimal far = above ? near.add(length) : near.subtract(length);
      if (!changes(piece.intersect(between(near, far))).isEmpty()) {
        return Optional.of(far);
      }
      length = length.add(length);
    }
    return Optional.empty();
  }

  /**
   * The line to a grid of so many decimals: the answer is the same on this side of it, and another
   * at the value that is given.
   */
  private Optional<Margin.Line> halved(
      ValueSet piece, BigDecimal near, BigDecimal far, boolean above, int decimals) {
    BigDecimal grid = BigDecimal.ONE.movePointLeft(decimals);
    BigDecimal low = near;
    BigDecimal high = far;
    for (int i = 0; i < HALVINGS_AT_MOST && low.compareTo(far) != 0; i++) {
      if (changes(piece.intersect(between(low, high))).isEmpty()) {
        low = high;
        high = far;
      } else if (high.subtract(low).abs().compareTo(grid) > 0) {
        high = low.add(high).divide(BigDecimal.valueOf(2), decimals, RoundingMode.HALF_EVEN);
      } else {
        Optional<Margin.Line> line = between(piece, low, high);
        if (line.isPresent()) {
          return line;
        }
        // Something may change between two values of the grid, or be unclear over the stretch only.
        nearest = false;
        low = high;
        high = far;
      }
    }
    nearest &= low.compareTo(far) == 0;
    return Optional.empty();
  }

  private Optional<Margin.Line> between(ValueSet piece, BigDecimal low, BigDecimal high) {
    Value value = Value.of(high);
    List<Margin.Change> there = piece.contains(value) ? changes(ValueSet.of(value)) : List.of();
    if (there.isEmpty()) {
      return Optional.empty();
    }
    // Between two values of the grid the line is taken to be the rounder one.
    boolean beyond = scale(low) < scale(high) && changes(ValueSet.of(Value.of(low))).isEmpty();
    return Optional.of(new Margin.Line(beyond ? Value.of(low) : value, beyond, value, there));
  }

  private static ValueSet between(BigDecimal one, BigDecimal other) {
    return ValueSet.between(
        ValueType.NUMBER, Value.of(one.min(other)), true, Value.of(one.max(other)), true);
  }

  private Margin.Error error(BigDecimal size) {
    ValueSet range =
        field.allowed().intersect(between(recorded.subtract(size), recorded.add(size)));
    if (changes(range).isEmpty()) {
      return new Margin.Error(size, Margin.Verdict.HOLDS, List.of());
    }
    List<Facet> changing = new ArrayList<>();
    boolean undecided = false;
    for (ValueSet piece : classes.of(field, range)) {
      List<Margin.Change> over = changes(piece);
      List<Margin.Change> there = over.isEmpty() ? List.of() : atEnds(piece);
      undecided |= !over.isEmpty() && there.isEmpty();
      there.stream()
          .map(Margin.Change::facet)
          .filter(facet -> !changing.contains(facet))
          .forEach(changing::add);
    }
    changing.sort(Comparator.comparing(Facet::kind));
    Margin.Verdict verdict =
        !changing.isEmpty()
            ? Margin.Verdict.CHANGES
            : undecided ? Margin.Verdict.UNDECIDED : Margin.Verdict.HOLDS;
    return new Margin.Error(size, verdict, changing);
  }

  /** What changes at some value of the class: near either end or in the middle. */
  private List<Margin.Change> atEnds(ValueSet piece) {
    Interval hull = piece.hull();
    BigDecimal low = number(hull.low());
    BigDecimal high = number(hull.high());
    List<Margin.Change> changes = new ArrayList<>();
    for (BigDecimal share : List.of(new BigDecimal("0"), new BigDecimal("0.5"), BigDecimal.ONE)) {
      Value value = Value.of(low.add(high.subtract(low).multiply(share)));
      if (piece.contains(value)) {
        changes.addAll(changes(ValueSet.of(value)));
      }
    }
    return changes;
  }

  private static int scale(BigDecimal number) {
    return Math.max(0, number.stripTrailingZeros().scale());
  }

  private static BigDecimal number(@Nullable Value value) {
    if (value instanceof Value.NumberValue number) {
      return number.number();
    }
    throw new IllegalStateException("not a number, or no end: " + value);
  }
}
