package org.cotyla.firing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.cotyla.expression.Scope;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Row;
import org.cotyla.value.Truth;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.EntryPoint;

/** The working memory of one evaluation. Not thread-safe; one per evaluation. */
public final class Session implements AutoCloseable {

  private static final Comparator<Row> SHEET_ORDER = Comparator.comparingInt(Row::position);

  private final KieSession session;

  Session(KieSession session) {
    this.session = session;
  }

  /**
   * The rows of the table that match or may match, in the order of the sheet.
   *
   * @param table the table
   * @param place its place in the list that the rule base was built from
   * @param values what each name can be
   */
  public List<MatchedRow> fire(DecisionTable table, int place, Scope values) {
    EntryPoint entryPoint = session.getEntryPoint(RuleBase.entryPointOf(place));
    if (entryPoint == null) {
      return List.of();
    }
    TableFact fact = new TableFact(values);
    entryPoint.insert(fact);
    session.fireAllRules();
    List<Row> fired = fact.fired();
    fired.sort(SHEET_ORDER);
    boolean complete = isComplete(table, values);
    List<MatchedRow> matched = new ArrayList<>(fired.size());
    for (Row row : fired) {
      matched.add(new MatchedRow(row, complete || isCertain(table, row, values)));
    }
    return matched;
  }

  /** Whether every name that the table uses has one value, so that no test can be open. */
  private static boolean isComplete(DecisionTable table, Scope values) {
    for (DecisionTable.Input input : table.inputs()) {
      if (!values.valueOf(input.symbol()).isCertain()) {
        return false;
      }
    }
    return true;
  }

  private static boolean isCertain(DecisionTable table, Row row, Scope values) {
    for (int i = 0; i < row.tests().size(); i++) {
      Truth truth =
          row.tests()
              .get(i)
              .prepared()
              .truth(values.valueOf(table.inputs().get(i).symbol()), values);
      if (truth != Truth.TRUE) {
        return false;
      }
    }
    return true;
  }

  @Override
  public void close() {
    session.dispose();
  }
}
