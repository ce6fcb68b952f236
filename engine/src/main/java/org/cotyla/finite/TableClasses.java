package org.cotyla.finite;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.cotyla.evaluate.AnswerScope;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.PreparedTest;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Row;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;

/**
 * One table's inputs, cut where its cells tell values apart, to describe a set of cases by as few
 * findings as will do. Looks at the table alone.
 */
public final class TableClasses {

  private final DecisionTable table;
  private final Map<Symbol, List<PossibleValues>> pieces = new LinkedHashMap<>();

  /**
   * @param table the table
   * @param whole what each input can be at all
   */
  public TableClasses(DecisionTable table, Map<Symbol, PossibleValues> whole) {
    this.table = table;
    Map<Symbol, List<ValueSet>> cuts = new HashMap<>();
    for (Row row : table.rows()) {
      for (int i = 0; i < row.tests().size(); i++) {
        Symbol input = table.inputs().get(i).symbol();
        row.tests()
            .get(i)
            .prepared()
            .region()
            .ifPresent(
                region -> cuts.computeIfAbsent(input, name -> new ArrayList<>()).add(region));
      }
    }
    for (DecisionTable.Input input : table.inputs()) {
      Symbol symbol = input.symbol();
      PossibleValues all =
          whole.getOrDefault(symbol, PossibleValues.of(ValueSet.all(symbol.type())));
      pieces.put(symbol, cut(all, cuts.getOrDefault(symbol, List.of())));
    }
  }

  private static List<PossibleValues> cut(PossibleValues all, List<ValueSet> regions) {
    List<ValueSet> parts = new ArrayList<>();
    for (Interval part : all.values().parts()) {
      parts.add(ValueSet.ofIntervals(all.type(), List.of(part)));
    }
    for (ValueSet region : List.copyOf(new java.util.LinkedHashSet<>(regions))) {
      List<ValueSet> next = new ArrayList<>();
      for (ValueSet part : parts) {
        ValueSet inside = part.intersect(region);
        if (inside.isEmpty() || inside.equals(part)) {
          next.add(part);
        } else {
          next.addAll(convex(inside));
          next.addAll(convex(part.intersect(region.complement())));
        }
      }
      parts = next;
    }
    parts.sort((a, b) -> compare(a.hull(), b.hull()));
    List<PossibleValues> pieces = new ArrayList<>();
    parts.forEach(part -> pieces.add(PossibleValues.of(part)));
    if (all.orNothing()) {
      pieces.add(PossibleValues.nothing(all.type()));
    }
    return pieces;
  }

  private static List<ValueSet> convex(ValueSet set) {
    return set.parts().stream()
        .map(part -> ValueSet.ofIntervals(set.type(), List.of(part)))
        .toList();
  }

  private static int compare(Interval a, Interval b) {
    Value low = a.low();
    Value other = b.low();
    if (low == null || other == null) {
      return low == other ? 0 : low == null ? -1 : 1;
    }
    int order = low.compareTo(other);
    return order != 0 ? order : Boolean.compare(b.lowIncluded(), a.lowIncluded());
  }

  /** The pieces in which an answer's inputs lie. */
  public Region around(Recommendation answer) {
    AnswerScope scope = AnswerScope.of(answer);
    Region region = new Region(Map.of());
    for (Map.Entry<Symbol, List<PossibleValues>> input : pieces.entrySet()) {
      PossibleValues value = scope.valueOf(input.getKey());
      PossibleValues side = value;
      for (PossibleValues piece : input.getValue()) {
        side = piece.containsAll(value) ? piece : side;
      }
      region = region.with(input.getKey(), side);
    }
    return region;
  }

  /**
   * The widest region around the given one of which the condition still holds, with as few names as
   * it can be told by.
   */
  public Region widest(Region start, Predicate<Region> condition) {
    Region region = start;
    List<Symbol> inputs = new ArrayList<>(start.sides().keySet());
    for (Symbol input : inputs) {
      Region without = region.without(input);
      region = condition.test(without) ? without : region;
    }
    for (Symbol input : List.copyOf(region.sides().keySet())) {
      region = widened(region, input, condition);
    }
    return region;
  }

  private Region widened(Region start, Symbol input, Predicate<Region> condition) {
    Region region = start;
    for (PossibleValues piece : pieces.getOrDefault(input, List.of())) {
      PossibleValues side =
          Optional.ofNullable(region.sides().get(input)).map(piece::union).orElse(piece);
      Region wider = region.with(input, side);
      region = condition.test(wider) ? wider : region;
    }
    return region;
  }

  /** Whether the table's cells alone say that the row matches no case of the region. */
  public boolean isOutside(Row row, Region region) {
    for (int i = 0; i < row.tests().size(); i++) {
      PreparedTest test = row.tests().get(i).prepared();
      PossibleValues side = region.sides().get(table.inputs().get(i).symbol());
      Optional<ValueSet> cell = test.region();
      if (side != null && cell.isPresent() && !test.isAnything()) {
        boolean meets =
            cell.get().intersects(side.values())
                || (side.orNothing() && test.forNothing() != Truth.FALSE);
        if (!meets) {
          return true;
        }
      }
    }
    return false;
  }
}
