package org.cotyla.testcases.gaps;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Region;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;
import org.kie.dmn.feel.runtime.Range.RangeBoundary;
import org.kie.dmn.validation.dtanalysis.model.Bound;
import org.kie.dmn.validation.dtanalysis.model.Hyperrectangle;

/**
 * Drools' boxes as regions of ours. Its domains never hold nothing. It counts values of a list as
 * stretches between one and the next in alphabetical order, of which only the values are meant.
 */
final class Boxes {

  private Boxes() {}

  /** The box; columns that it does not name can be anything. */
  static Region region(DecisionTable table, Hyperrectangle box) {
    Map<Symbol, PossibleValues> sides = new LinkedHashMap<>();
    for (int i = 0; i < box.getEdges().size(); i++) {
      Symbol input = table.inputs().get(i).symbol();
      ValueSet side = side(input, box.getEdges().get(i));
      ValueSet both = sides.containsKey(input) ? sides.get(input).values().intersect(side) : side;
      sides.put(input, PossibleValues.of(both));
    }
    return new Region(sides);
  }

  private static ValueSet side(
      Symbol input, org.kie.dmn.validation.dtanalysis.model.Interval edge) {
    List<Interval> part =
        Interval.between(
                value(edge.getLowerBound()),
                edge.getLowerBound().getBoundaryType() == RangeBoundary.CLOSED,
                value(edge.getUpperBound()),
                edge.getUpperBound().getBoundaryType() == RangeBoundary.CLOSED)
            .stream()
            .toList();
    if (input.isChoice() || input.type() == ValueType.YES_NO) {
      return ValueSet.of(
          input.type(),
          values(input).stream()
              .filter(value -> part.stream().anyMatch(stretch -> stretch.contains(value)))
              .toList());
    }
    return ValueSet.ofIntervals(input.type(), part);
  }

  private static List<Value> values(Symbol input) {
    return input.isChoice()
        ? input.choices().stream().map(Value::of).toList()
        : List.of(Value.of(false), Value.of(true));
  }

  /** The end's value; null for an end that lies at infinity. */
  private static @org.jspecify.annotations.Nullable Value value(Bound<?> bound) {
    Object end = bound.getValue();
    if (end instanceof BigDecimal number) {
      return Value.of(number);
    }
    if (end instanceof String text) {
      return Value.of(text);
    }
    if (end instanceof Boolean answer) {
      return Value.of(answer);
    }
    return end instanceof LocalDate day ? Value.of(day) : null;
  }

  /** Whether no value at all lies in the box. */
  static boolean isEmpty(Region region) {
    return region.sides().values().stream().anyMatch(side -> side.values().isEmpty());
  }
}
