package org.cotyla.firing;

import java.util.ArrayList;
import java.util.List;
import org.cotyla.expression.Scope;
import org.cotyla.firing.DistinctTests.Numbered;
import org.cotyla.protocol.Row;
import org.cotyla.value.Truth;
import org.jspecify.annotations.Nullable;

/** The fact that one table's rules match on: what each name can be, and the rows fired so far. */
final class TableFact {

  private final Scope values;
  private final DistinctTests tests;
  private final @Nullable Truth[] truths;
  private final List<Row> fired = new ArrayList<>();

  TableFact(Scope values, DistinctTests tests) {
    this.values = values;
    this.tests = tests;
    this.truths = new Truth[tests.count()];
  }

  /** Whether the test holds; worked out when it is first asked for. */
  Truth truth(int number) {
    Truth truth = truths[number];
    if (truth == null) {
      Numbered numbered = tests.test(number);
      truth = numbered.test().truth(values.valueOf(numbered.input()), values);
      truths[number] = truth;
    }
    return truth;
  }

  void fired(Row row) {
    fired.add(row);
  }

  List<Row> fired() {
    return fired;
  }
}
