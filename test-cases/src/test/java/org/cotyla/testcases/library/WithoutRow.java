package org.cotyla.testcases.library;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Step;

/** A protocol as it would be had its author left a row out. */
final class WithoutRow {

  private final Map<Step, Step> replaced = new IdentityHashMap<>();
  private final String id;

  private WithoutRow(String id) {
    this.id = id;
  }

  static Protocol of(Protocol protocol, String id) {
    return new WithoutRow(id).protocol(protocol);
  }

  private Protocol protocol(Protocol whole) {
    List<DecisionTable> decisions = whole.decisions().stream().map(this::table).toList();
    List<Ranking> rankings =
        whole.rankings().stream()
            .map(
                ranking ->
                    new Ranking(
                        ranking.name(),
                        ranking.options(),
                        ranking.first(),
                        ranking.voters().stream().map(this::table).toList()))
            .toList();
    for (int i = 0; i < rankings.size(); i++) {
      replaced.put(whole.rankings().get(i), rankings.get(i));
    }
    return new Protocol(
        whole.about(),
        whole.fields(),
        rankings,
        whole.calculations(),
        decisions,
        whole.steps().stream().map(step -> replaced.getOrDefault(step, step)).toList(),
        whole.sources(),
        whole.changes(),
        List.of(),
        whole.vocabulary(),
        whole.checks(),
        whole.reasons(),
        whole.outcomes(),
        whole.remarks());
  }

  private DecisionTable table(DecisionTable table) {
    return (DecisionTable) replaced.computeIfAbsent(table, step -> without(table));
  }

  private DecisionTable without(DecisionTable table) {
    boolean holds = table.rows().stream().anyMatch(row -> row.id().equals(id));
    return holds
        ? new DecisionTable(
            table.name(),
            table.asks(),
            table.hitPolicy(),
            table.ranking(),
            table.shownAs(),
            table.inputs(),
            table.outputs(),
            table.rows().stream().filter(row -> !row.id().equals(id)).toList(),
            table.otherwise(),
            table.at())
        : table;
  }
}
