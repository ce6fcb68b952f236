package org.cotyla.check;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.evaluate.Standing;
import org.cotyla.protocol.Row;

/** Rows that are known to count in some case, so that nobody needs to look for one. */
final class SeenRows {

  private final Set<Row> rows = Collections.newSetFromMap(new IdentityHashMap<>());

  /** The same rows, to which more can be added without a word to whoever else goes by them. */
  SeenRows copy() {
    SeenRows copy = new SeenRows();
    copy.rows.addAll(rows);
    return copy;
  }

  void add(Recommendation answer) {
    for (Firing firing : answer.firings()) {
      if (firing.standing() == Standing.DECIDES) {
        rows.add(firing.row());
      }
    }
  }

  boolean contains(Row row) {
    return rows.contains(row);
  }
}
