package org.cotyla.firing;

import org.cotyla.firing.DistinctTests.Numbered;
import org.cotyla.issue.CellRef;
import org.cotyla.value.Truth;
import org.drools.model.functions.Predicate1;
import org.drools.model.functions.PredicateInformation;

/** One cell's test as Drools sees it: a row stays in play unless the test is false. */
final class CellPredicate implements Predicate1<TableFact> {

  private static final long serialVersionUID = 1L;

  private final int number;
  private final transient Numbered test;
  private final transient CellRef at;

  CellPredicate(Numbered test, CellRef at) {
    this.number = test.number();
    this.test = test;
    this.at = at;
  }

  @Override
  public boolean test(TableFact fact) {
    return fact.truth(number) != Truth.FALSE;
  }

  @Override
  public PredicateInformation predicateInformation() {
    String text = test.input().name() + " " + test.test().test().print();
    return new PredicateInformation(text, at.plain(), at.sheet());
  }
}
