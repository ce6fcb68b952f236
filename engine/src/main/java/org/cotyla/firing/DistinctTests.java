package org.cotyla.firing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.expression.PreparedTest;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Row;

/**
 * The tests of one table that differ in meaning, numbered from 0. Rows share them, so that each is
 * worked out once per case however many rows use it. Immutable.
 */
final class DistinctTests {

  /** One test of one input. */
  record Numbered(int number, Symbol input, PreparedTest test) {}

  private final List<Numbered> tests;
  private final Map<Row, int[]> ofRows;

  private DistinctTests(List<Numbered> tests, Map<Row, int[]> ofRows) {
    this.tests = tests;
    this.ofRows = ofRows;
  }

  static DistinctTests of(DecisionTable table) {
    Map<String, Numbered> byIdentity = new HashMap<>();
    List<Numbered> tests = new ArrayList<>();
    Map<Row, int[]> ofRows = new java.util.IdentityHashMap<>();
    for (Row row : table.rows()) {
      int[] numbers = new int[row.tests().size()];
      for (int column = 0; column < numbers.length; column++) {
        PreparedTest test = row.tests().get(column).prepared();
        Symbol input = table.inputs().get(column).symbol();
        String identity = input.index() + "|" + test.test().print();
        Numbered known = byIdentity.get(identity);
        if (known == null) {
          known = new Numbered(tests.size(), input, test);
          byIdentity.put(identity, known);
          tests.add(known);
        }
        numbers[column] = known.number();
      }
      ofRows.put(row, numbers);
    }
    return new DistinctTests(List.copyOf(tests), ofRows);
  }

  int count() {
    return tests.size();
  }

  Numbered test(int number) {
    return tests.get(number);
  }

  /** The numbers of the row's tests that say something, without repeats. */
  int[] telling(Row row) {
    return Arrays.stream(of(row))
        .filter(number -> !tests.get(number).test().isAnything())
        .distinct()
        .toArray();
  }

  /** The numbers of the row's tests, one for each column. */
  int[] of(Row row) {
    int[] numbers = ofRows.get(row);
    if (numbers == null) {
      throw new IllegalArgumentException("row `" + row.id() + "` is not of this table");
    }
    return numbers;
  }
}
