package org.cotyla.firing;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.cotyla.protocol.Row;
import org.cotyla.value.Truth;
import org.drools.model.functions.Predicate1;
import org.drools.model.functions.PredicateInformation;

/** A row's tests as Drools sees them: the row stays in play unless one of them is false. */
final class RowPredicate implements Predicate1<TableFact> {

  private static final long serialVersionUID = 1L;

  private final int[] tests;
  private final transient Row row;

  /**
   * @param tests the numbers of the tests that say something
   * @param row the row, for messages
   */
  RowPredicate(int[] tests, Row row) {
    this.tests = tests.clone();
    this.row = row;
  }

  /**
   * Says what the condition means. Drools takes two conditions with one identity for the same one,
   * so rows with the same tests share it and all others differ.
   */
  String identity() {
    return Arrays.stream(tests).sorted().mapToObj(String::valueOf).collect(Collectors.joining(" "));
  }

  @Override
  public boolean test(TableFact fact) {
    for (int test : tests) {
      if (fact.truth(test) == Truth.FALSE) {
        return false;
      }
    }
    return true;
  }

  @Override
  public PredicateInformation predicateInformation() {
    return new PredicateInformation("row " + row.id(), row.at().plain(), row.at().sheet());
  }
}
