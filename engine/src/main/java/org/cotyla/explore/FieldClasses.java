package org.cotyla.explore;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Row;
import org.cotyla.value.Interval;
import org.cotyla.value.ValueSet;

/**
 * The classes into which the cells of a protocol cut what a field can be: within one, no cell that
 * tests the field itself tells two values apart. Formulas may.
 */
final class FieldClasses {

  private final Map<Symbol, Set<ValueSet>> cuts = new HashMap<>();

  FieldClasses(Protocol protocol) {
    protocol.givenFields().forEach(field -> cuts.put(field.symbol(), new LinkedHashSet<>()));
    for (DecisionTable table : protocol.decisions()) {
      for (Row row : table.rows()) {
        for (int i = 0; i < row.tests().size(); i++) {
          Set<ValueSet> ofField = cuts.get(table.inputs().get(i).symbol());
          Optional<ValueSet> region = row.tests().get(i).prepared().region();
          if (ofField != null && region.isPresent()) {
            region.get().parts().forEach(part -> addEnds(part, region.get(), ofField));
          }
        }
      }
    }
  }

  private static void addEnds(Interval part, ValueSet region, Set<ValueSet> cuts) {
    if (part.low() != null) {
      cuts.add(ValueSet.between(region.type(), null, false, part.low(), !part.lowIncluded()));
    }
    if (part.high() != null) {
      cuts.add(ValueSet.between(region.type(), null, false, part.high(), part.highIncluded()));
    }
  }

  /** The classes among these values, in ascending order. */
  List<ValueSet> of(Field field, ValueSet values) {
    List<ValueSet> pieces = new ArrayList<>();
    for (Interval part : values.parts()) {
      pieces.add(ValueSet.ofIntervals(values.type(), List.of(part)));
    }
    for (ValueSet below : cuts.getOrDefault(field.symbol(), Set.of())) {
      for (int i = 0; i < pieces.size(); i++) {
        ValueSet lower = pieces.get(i).intersect(below);
        if (!lower.isEmpty() && !lower.equals(pieces.get(i))) {
          ValueSet upper = pieces.get(i).intersect(below.complement());
          pieces.set(i, lower);
          pieces.add(i + 1, upper);
          i++;
        }
      }
    }
    return pieces;
  }
}
