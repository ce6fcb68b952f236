package org.cotyla.check;

import java.util.HashMap;
import java.util.Map;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Row;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.jspecify.annotations.Nullable;

/** Thresholds that lie outside what a field may be: often a slip of a digit or a unit. */
final class BeyondAllowed {

  private final Protocol protocol;
  private final Remarks remarks;
  private final Map<Symbol, ValueSet> allowed = new HashMap<>();

  BeyondAllowed(Protocol protocol, Remarks remarks) {
    this.protocol = protocol;
    this.remarks = remarks;
    for (Field field : protocol.fields()) {
      if (!field.allowed().isFinite()) {
        allowed.put(field.symbol(), field.allowed());
      }
    }
  }

  void check() {
    for (DecisionTable table : protocol.decisions()) {
      for (Row row : table.rows()) {
        for (int i = 0; i < row.tests().size(); i++) {
          ValueSet range = allowed.get(table.inputs().get(i).symbol());
          if (range != null) {
            test(row, row.tests().get(i), table.inputs().get(i).symbol(), range);
          }
        }
      }
    }
  }

  private void test(Row row, Row.Test test, Symbol input, ValueSet range) {
    ValueSet region = test.prepared().region().orElse(range);
    boolean meets = region.intersects(range);
    for (Interval part : region.parts()) {
      // A test that never holds is reported when the workbook is read.
      if (meets
          && !test.prepared().isAnything()
          && (beyond(part.low(), range) || beyond(part.high(), range))) {
        remarks.warning(
            "K161",
            test.at(),
            row.id(),
            "`" + test.text() + "` reaches beyond what `" + input.name() + "` may be",
            "allowed is " + range.plain());
        return;
      }
    }
  }

  private static boolean beyond(@Nullable Value end, ValueSet range) {
    if (end == null || range.isEmpty()) {
      return false;
    }
    Interval hull = range.hull();
    return (hull.low() != null && end.compareTo(hull.low()) < 0)
        || (hull.high() != null && end.compareTo(hull.high()) > 0);
  }
}
