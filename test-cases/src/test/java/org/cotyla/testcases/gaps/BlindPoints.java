package org.cotyla.testcases.gaps;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;

/**
 * Single values that Drools' analysis steps over. It goes through a column from end to end of the
 * cells' intervals, and takes two ends at one value that face the same way for one, also where one
 * includes the value and the other does not: between {@code 2)} and {@code 2]} lies the point 2.
 *
 * <p>In a column with a list of values each cell ends before the next value in alphabetical order,
 * and only the last value ends with itself: so it is the last that is stepped over.
 */
final class BlindPoints {

  private final Protocol protocol;
  private final DecisionTable table;

  BlindPoints(Protocol protocol, DecisionTable table) {
    this.protocol = protocol;
    this.table = table;
  }

  ValueSet of(Symbol input) {
    List<ValueSet> cells = cells(input);
    if (input.isChoice()) {
      Value last =
          input.choices().stream().max(Comparator.naturalOrder()).map(Value::of).orElseThrow();
      boolean differ = cells.stream().map(cell -> cell.contains(last)).distinct().count() > 1;
      return differ ? ValueSet.of(last) : ValueSet.none(input.type());
    }
    List<Interval> parts = cells.stream().flatMap(cell -> cell.parts().stream()).toList();
    Set<Value> points = new HashSet<>();
    points.addAll(differing(parts, Interval::low, Interval::lowIncluded));
    points.addAll(differing(parts, Interval::high, Interval::highIncluded));
    return ValueSet.of(input.type(), points);
  }

  private List<ValueSet> cells(Symbol input) {
    ValueSet allowed =
        protocol.fields().stream()
            .filter(field -> field.symbol().equals(input))
            .map(Field::allowed)
            .findFirst()
            .orElse(ValueSet.all(input.type()));
    List<ValueSet> cells = new ArrayList<>();
    for (int i = 0; i < table.inputs().size(); i++) {
      int column = i;
      if (table.inputs().get(i).symbol().equals(input)) {
        table.rows().stream()
            .flatMap(row -> row.tests().get(column).prepared().region().stream())
            .forEach(cell -> cells.add(cell.intersect(allowed)));
      }
    }
    return cells;
  }

  private static Set<Value> differing(
      List<Interval> parts,
      Function<Interval, @org.jspecify.annotations.Nullable Value> end,
      Function<Interval, Boolean> isIncluded) {
    Set<Value> included = new HashSet<>();
    Set<Value> excluded = new HashSet<>();
    for (Interval part : parts) {
      Value value = end.apply(part);
      if (value != null) {
        (isIncluded.apply(part) ? included : excluded).add(value);
      }
    }
    included.retainAll(excluded);
    return included;
  }
}
