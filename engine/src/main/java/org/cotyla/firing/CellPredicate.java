package org.cotyla.firing;

import org.cotyla.expression.PreparedTest;
import org.cotyla.expression.Symbol;
import org.cotyla.issue.CellRef;
import org.cotyla.value.Truth;
import org.drools.model.functions.Predicate1;
import org.drools.model.functions.PredicateInformation;

/** One cell's test as Drools sees it: a row stays in play unless the test is false. */
final class CellPredicate implements Predicate1<TableFact> {

  private static final long serialVersionUID = 1L;

  private final transient Symbol input;
  private final transient PreparedTest test;
  private final transient CellRef at;

  CellPredicate(Symbol input, PreparedTest test, CellRef at) {
    this.input = input;
    this.test = test;
    this.at = at;
  }

  /** Says what the test means, since Drools takes two tests with one identity for the same test. */
  String identity() {
    return input.index() + "|" + test.test().print();
  }

  @Override
  public boolean test(TableFact fact) {
    return test.truth(fact.values().valueOf(input), fact.values()) != Truth.FALSE;
  }

  @Override
  public PredicateInformation predicateInformation() {
    return new PredicateInformation(
        input.name() + " " + test.test().print(), at.plain(), at.sheet());
  }
}
