package org.cotyla.compare;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.compare.CanonicalTable.CanonicalRow;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Ranking;

/** Whether a step of both protocols says the same of the names that it reads. */
final class WrittenAlike {

  private final Side old;
  private final Side young;

  WrittenAlike(Side old, Side young) {
    this.old = old;
    this.young = young;
  }

  boolean are(Calculation was, Calculation is) {
    return old.meaning(was.expression()).equals(young.meaning(is.expression()));
  }

  boolean are(DecisionTable was, DecisionTable is) {
    return CanonicalTable.of(was, old).equals(CanonicalTable.of(is, young));
  }

  /** Whether the same rows also have the same ids. */
  boolean haveSameIds(DecisionTable was, DecisionTable is) {
    return rows(was, old).equals(rows(is, young));
  }

  /** The rows in which the two differ, when they differ in nothing else. */
  Optional<ChangedRows> changedRows(DecisionTable was, DecisionTable is) {
    return ChangedRows.between(was, is, old, young);
  }

  private static Map<String, CanonicalRow> rows(DecisionTable table, Side side) {
    Map<String, CanonicalRow> rows = new HashMap<>();
    table.rows().forEach(row -> rows.put(row.id(), CanonicalTable.row(table, row, side)));
    table.otherwise().ifPresent(row -> rows.put(row.id(), CanonicalTable.row(table, row, side)));
    return rows;
  }

  /** Whether the two rank the same options in the same order; it says nothing of their votes. */
  static boolean haveSameOptions(Ranking was, Ranking is) {
    return names(was).equals(names(is));
  }

  private static List<String> names(Ranking ranking) {
    return ranking.options().stream().map(Option::name).toList();
  }
}
