package org.cotyla.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.cotyla.expression.Symbol;
import org.cotyla.name.Names;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Row;
import org.cotyla.value.ValueSet;

/**
 * What a table says, without how it is written: ids, reasons, the order of columns and, where the
 * hit policy does not look at it, of rows are left out; a constant counts by its value.
 *
 * @param policy the hit policy and the ranking it votes in
 * @param outputs the names of its results
 * @param rows what each row says, sorted where their order says nothing
 * @param otherwise what the default row gives
 */
record CanonicalTable(
    String policy,
    List<String> outputs,
    List<CanonicalRow> rows,
    Optional<CanonicalRow> otherwise) {

  /** One row. A test that always holds is not in it. */
  record CanonicalRow(Map<String, TestMeaning> tests, List<String> results) {}

  /** When a test holds: for values of a region, or by a formula. */
  record TestMeaning(Optional<ValueSet> region, String rest) {}

  static CanonicalTable of(DecisionTable table, Side side) {
    List<CanonicalRow> rows = new ArrayList<>();
    table.rows().forEach(row -> rows.add(row(table, row, side)));
    if (!orderMatters(table.hitPolicy())) {
      rows.sort(java.util.Comparator.comparing(CanonicalRow::toString));
    }
    List<String> outputs = new ArrayList<>();
    for (DecisionTable.Output output : table.outputs()) {
      boolean byOrder = table.hitPolicy().needsPriorities();
      outputs.add(Names.key(output.symbol().name()) + (byOrder ? output.symbol().choices() : ""));
    }
    return new CanonicalTable(
        table.hitPolicy() + table.ranking().map(Names::key).map(name -> " " + name).orElse(""),
        outputs,
        rows,
        table.otherwise().map(row -> row(table, row, side)));
  }

  private static boolean orderMatters(HitPolicy policy) {
    return policy == HitPolicy.FIRST
        || policy == HitPolicy.PRIORITY
        || policy == HitPolicy.RULE_ORDER
        || policy == HitPolicy.OUTPUT_ORDER;
  }

  static CanonicalRow row(DecisionTable table, Row row, Side side) {
    Map<String, TestMeaning> tests = new TreeMap<>();
    for (int i = 0; i < row.tests().size(); i++) {
      Symbol input = table.inputs().get(i).symbol();
      Optional<TestMeaning> meaning = side.meaning(input, row.tests().get(i).prepared());
      meaning.ifPresent(known -> tests.merge(Names.key(input.name()), known, CanonicalTable::both));
    }
    List<String> results = new ArrayList<>();
    row.results().forEach(result -> results.add(side.meaning(result.expression())));
    row.vote()
        .ifPresent(
            vote -> {
              results.add(vote.option());
              results.add(vote.effect().word());
              results.add(vote.points().stripTrailingZeros().toPlainString());
            });
    return new CanonicalRow(tests, results);
  }

  /** Two columns of one name. */
  private static TestMeaning both(TestMeaning one, TestMeaning other) {
    return new TestMeaning(Optional.empty(), one + " and " + other);
  }
}
