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
  private @Nullable RuntimeException fault;

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
      truth = truth(numbered);
      truths[number] = truth;
    }
    return truth;
  }

  /** Drools never sees an exception, which would come back as one of its own. */
  private Truth truth(Numbered test) {
    try {
      return test.test().truth(values.valueOf(test.input()), values);
    } catch (RuntimeException thrown) {
      fault = thrown;
      return Truth.FALSE;
    }
  }

  /** Throws what a test threw, as a function that a host adds may. */
  void rethrow() {
    if (fault != null) {
      throw fault;
    }
  }

  void fired(Row row) {
    fired.add(row);
  }

  List<Row> fired() {
    return fired;
  }
}
