package org.cotyla.evaluate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.expression.PreparedTest;
import org.cotyla.expression.Scope;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;
import org.cotyla.value.ValueSet;

/**
 * Whether rows that each may match together leave no way open in which none matches.
 *
 * <p>The possible inputs are a box with a side per name. Each row cuts its own box out of it; the
 * rows cover everything when nothing is left. The answer yes is a proof; when the pieces become too
 * many the answer is no, which only makes a result less certain than it is.
 */
final class Coverage {

  private static final int PIECES_AT_MOST = 400;

  private Coverage() {}

  static boolean isComplete(DecisionTable table, List<Firing> rows, Scope values) {
    Map<Symbol, PossibleValues> box = new LinkedHashMap<>();
    for (DecisionTable.Input input : table.inputs()) {
      box.put(input.symbol(), values.valueOf(input.symbol()));
    }
    List<Map<Symbol, PossibleValues>> left = List.of(box);
    for (Firing firing : rows) {
      if (left.isEmpty()) {
        return true;
      }
      if (left.size() > PIECES_AT_MOST) {
        return false;
      }
      List<Map<Symbol, PossibleValues>> next = new ArrayList<>();
      left.forEach(piece -> next.addAll(without(piece, table, firing.row())));
      left = next;
    }
    return left.isEmpty();
  }

  /** The parts of the piece that the row does not cover. */
  private static List<Map<Symbol, PossibleValues>> without(
      Map<Symbol, PossibleValues> piece, DecisionTable table, Row row) {
    List<Map<Symbol, PossibleValues>> rest = new ArrayList<>();
    Map<Symbol, PossibleValues> inside = new LinkedHashMap<>(piece);
    for (int i = 0; i < row.tests().size(); i++) {
      Symbol symbol = table.inputs().get(i).symbol();
      PreparedTest test = row.tests().get(i).prepared();
      if (test.isAnything()) {
        continue;
      }
      PossibleValues side = inside.getOrDefault(symbol, PossibleValues.nothing(symbol.type()));
      Optional<PossibleValues> outside = outside(side, test);
      if (outside.isEmpty()) {
        return List.of(piece);
      }
      if (!outside.get().values().isEmpty() || outside.get().orNothing()) {
        Map<Symbol, PossibleValues> part = new LinkedHashMap<>(inside);
        part.put(symbol, outside.get());
        rest.add(part);
        inside.put(symbol, inside(side, test));
      }
    }
    return rest;
  }

  /** What of the side the test leaves out; nothing when that is not known in all cases. */
  private static Optional<PossibleValues> outside(PossibleValues side, PreparedTest test) {
    return test.region()
        .map(
            region ->
                new PossibleValues(
                    differ(side.values(), region),
                    side.orNothing() && test.forNothing() != Truth.TRUE));
  }

  private static PossibleValues inside(PossibleValues side, PreparedTest test) {
    ValueSet region = test.region().orElseThrow();
    return new PossibleValues(
        side.values().intersect(region), side.orNothing() && test.forNothing() == Truth.TRUE);
  }

  private static ValueSet differ(ValueSet values, ValueSet region) {
    return values.intersect(region.complement());
  }
}
