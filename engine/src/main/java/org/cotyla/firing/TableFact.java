package org.cotyla.firing;

import java.util.ArrayList;
import java.util.List;
import org.cotyla.expression.Scope;
import org.cotyla.protocol.Row;

/** The fact that one table's rules match on: what each name can be, and the rows fired so far. */
final class TableFact {

  private final Scope values;
  private final List<Row> fired = new ArrayList<>();

  TableFact(Scope values) {
    this.values = values;
  }

  Scope values() {
    return values;
  }

  void fired(Row row) {
    fired.add(row);
  }

  List<Row> fired() {
    return fired;
  }
}
