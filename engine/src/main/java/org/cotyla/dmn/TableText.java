package org.cotyla.dmn;

import java.util.List;
import java.util.Optional;
import org.cotyla.protocol.Row;

/**
 * A decision table as the export writes it.
 *
 * @param type the type of the table's result
 * @param inputs the columns of tests
 * @param outputs the columns of results
 * @param rules the rows in order
 * @param defaults the results when no row matches, and the row that they stand in
 */
record TableText(
    String type,
    List<InputColumn> inputs,
    List<OutputColumn> outputs,
    List<Rule> rules,
    Optional<Rule> defaults) {

  /** A column of tests: the name that is tested, and its type. */
  record InputColumn(String expression, String type) {}

  /**
   * A column of results.
   *
   * @param name its name when there are several, else empty
   * @param label what people call it
   * @param type its type
   * @param order the results in order of priority, when that decides; else empty
   */
  record OutputColumn(String name, String label, String type, String order) {}

  /** A row: what is written for it, and the row itself for its id, reason and sources. */
  record Rule(Row row, List<String> tests, List<String> results) {

    Rule {
      tests = List.copyOf(tests);
      results = List.copyOf(results);
    }
  }

  TableText {
    inputs = List.copyOf(inputs);
    outputs = List.copyOf(outputs);
    rules = List.copyOf(rules);
  }
}
