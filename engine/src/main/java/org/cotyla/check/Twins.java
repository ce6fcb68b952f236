package org.cotyla.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.cotyla.expression.CellTest;
import org.cotyla.name.Names;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Row;
import org.cotyla.value.ValueSet;

/**
 * Rows that say the same: twice over, or in two rows where one would do. Rows with different
 * reasons are taken to be apart on purpose.
 */
final class Twins {

  private final DecisionTable table;
  private final Remarks remarks;

  Twins(DecisionTable table, Remarks remarks) {
    this.table = table;
    this.remarks = remarks;
  }

  void check() {
    repeats();
    for (int column = 0; column < table.inputs().size(); column++) {
      mergeable(column);
    }
  }

  private static List<CellTest> tests(Row row) {
    return row.tests().stream().map(test -> test.prepared().test()).toList();
  }

  /** Where all rows speak, a row that stands there twice speaks twice. */
  private void repeats() {
    if (table.hitPolicy().isSingleHit()) {
      return;
    }
    Map<List<CellTest>, List<Row>> alike = new HashMap<>();
    for (Row row : table.rows()) {
      List<Row> before = alike.computeIfAbsent(tests(row), key -> new ArrayList<>());
      for (Row earlier : before) {
        if (SameResult.of(row, earlier)) {
          remarks.warning(
              "K131",
              row.at(),
              row.id(),
              "row `"
                  + row.id()
                  + "` says the same as `"
                  + earlier.id()
                  + "` ("
                  + earlier.at().plain()
                  + "), so it speaks twice",
              "delete one of them");
        }
      }
      before.add(row);
    }
  }

  private void mergeable(int column) {
    Map<List<CellTest>, List<Row>> alike = new HashMap<>();
    for (Row row : table.rows()) {
      List<CellTest> others = new ArrayList<>(tests(row));
      others.remove(column);
      List<Row> before = alike.computeIfAbsent(others, key -> new ArrayList<>());
      before.stream()
          .filter(earlier -> canMerge(earlier, row, column))
          .findFirst()
          .ifPresent(earlier -> report(earlier, row, column));
      before.add(row);
    }
  }

  private boolean canMerge(Row a, Row b, int column) {
    ValueSet here = a.tests().get(column).prepared().region().orElse(null);
    ValueSet there = b.tests().get(column).prepared().region().orElse(null);
    boolean sameReason = Names.key(a.because()).equals(Names.key(b.because()));
    if (here == null || there == null || !sameReason || !SameResult.of(a, b)) {
      return false;
    }
    boolean speaksTwice = !table.hitPolicy().isSingleHit() && here.intersects(there);
    return !speaksTwice && !here.equals(there) && (isOrderFree() || nothingBetween(a, b));
  }

  private boolean isOrderFree() {
    HitPolicy policy = table.hitPolicy();
    return policy != HitPolicy.FIRST
        && policy != HitPolicy.PRIORITY
        && policy != HitPolicy.RULE_ORDER
        && policy != HitPolicy.OUTPUT_ORDER;
  }

  /** Under a policy of order, a row between them with another result may come first or between. */
  private boolean nothingBetween(Row a, Row b) {
    return IntStream.range(a.position() + 1, b.position())
        .mapToObj(table.rows()::get)
        .allMatch(between -> SameResult.of(between, a));
  }

  private void report(Row a, Row b, int column) {
    remarks.note(
        "K132",
        b.at(),
        b.id(),
        "rows `"
            + a.id()
            + "` ("
            + a.at().plain()
            + ") and `"
            + b.id()
            + "` differ only in `"
            + table.inputs().get(column).symbol().name()
            + "` and give the same for the same reason",
        "one row with both in that cell says the same");
  }
}
