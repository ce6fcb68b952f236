package org.cotyla.firing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.cotyla.expression.Scope;
import org.cotyla.protocol.Row;
import org.cotyla.value.Truth;
import org.jspecify.annotations.Nullable;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.EntryPoint;

/** The working memory of one evaluation. Not thread-safe; one per evaluation. */
public final class Session implements AutoCloseable {

  private static final Comparator<Row> SHEET_ORDER = Comparator.comparingInt(Row::position);

  private final KieBase kieBase;
  private final List<DistinctTests> tests;

  /** Opened when a table is fired: what is remembered needs none. */
  private @Nullable KieSession session;

  Session(KieBase kieBase, List<DistinctTests> tests) {
    this.kieBase = kieBase;
    this.tests = tests;
  }

  /**
   * The rows of a table none of whose tests is false, in the order of the sheet.
   *
   * @param table the table's place in the list that the rule base was built from
   * @param values what each name can be
   */
  public List<FiredRow> fire(int table, Scope values) {
    KieSession open = open();
    EntryPoint entryPoint = open.getEntryPoint(RuleBase.entryPointOf(table));
    if (entryPoint == null) {
      return List.of();
    }
    TableFact fact = new TableFact(values, tests.get(table));
    entryPoint.insert(fact);
    open.fireAllRules();
    fact.rethrow();
    fact.fired().sort(SHEET_ORDER);
    List<FiredRow> fired = new ArrayList<>(fact.fired().size());
    List<Truth> allTrue = List.of();
    for (Row row : fact.fired()) {
      Truth[] truths = truths(row, fact, tests.get(table));
      boolean certain = Arrays.stream(truths).allMatch(truth -> truth == Truth.TRUE);
      if (certain && allTrue.size() != truths.length) {
        allTrue = List.of(truths);
      }
      fired.add(new FiredRow(row, certain ? allTrue : List.of(truths)));
    }
    return fired;
  }

  private static Truth[] truths(Row row, TableFact fact, DistinctTests tests) {
    int[] numbers = tests.of(row);
    Truth[] truths = new Truth[numbers.length];
    for (int column = 0; column < numbers.length; column++) {
      truths[column] = fact.truth(numbers[column]);
    }
    return truths;
  }

  private KieSession open() {
    if (session == null) {
      session = kieBase.newKieSession();
    }
    return session;
  }

  @Override
  public void close() {
    if (session != null) {
      session.dispose();
    }
  }
}
