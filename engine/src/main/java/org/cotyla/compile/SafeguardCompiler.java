package org.cotyla.compile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.draft.TableDraft;
import org.cotyla.draft.Text;
import org.cotyla.issue.Issues;
import org.cotyla.protocol.DecisionTable.Input;
import org.cotyla.protocol.Demand;
import org.cotyla.protocol.Safeguard;
import org.cotyla.protocol.Safeguard.Condition;

/** The Safeguards sheet. */
final class SafeguardCompiler {

  private final DecisionCompiler decisions;
  private final RowCompiler rows;
  private final OutputRules outputs;
  private final DemandCompiler demands;
  private final References references;
  private final Issues issues;

  SafeguardCompiler(
      DecisionCompiler decisions,
      RowCompiler rows,
      OutputRules outputs,
      DemandCompiler demands,
      References references,
      Issues issues) {
    this.decisions = decisions;
    this.rows = rows;
    this.outputs = outputs;
    this.demands = demands;
    this.references = references;
    this.issues = issues;
  }

  List<Safeguard> compile(TableDraft draft) {
    List<Optional<Input>> inputs = draft.namesUnder("when").stream().map(decisions::input).toList();
    return draft.rows().stream().flatMap(row -> safeguard(row, inputs).stream()).toList();
  }

  private Optional<Safeguard> safeguard(TableDraft.Row row, List<Optional<Input>> inputs) {
    decisions.id(row.key(), false);
    List<Condition> conditions = new ArrayList<>();
    boolean sound = true;
    for (int i = 0; i < inputs.size(); i++) {
      if (inputs.get(i).isEmpty()) {
        sound = false;
        continue;
      }
      Input input = inputs.get(i).get();
      Optional<Condition> condition =
          rows.test(row.under("when").get(i), input.symbol())
              .map(test -> new Condition(input, test));
      sound &= condition.isPresent();
      condition.filter(one -> !one.test().prepared().isAnything()).ifPresent(conditions::add);
    }
    conditions.forEach(
        condition ->
            outputs.reportListsRead(
                condition.test().prepared().references(), condition.test().at()));
    Text because = row.get("because");
    if (because.isNone()) {
      issues.error(
          "W123",
          because.at(),
          "safeguard `" + row.key().text() + "` has no because",
          "give its reason in one sentence");
    }
    List<String> sources =
        references.keys(row.get("source"), "safeguard `" + row.key().text() + "`");
    Optional<Demand> demand = demands.compile(row.get("must"), row.get("what"));
    return sound && demand.isPresent()
        ? Optional.of(
            new Safeguard(
                row.key().text(),
                conditions,
                demand.get(),
                because.text(),
                sources,
                row.key().at()))
        : Optional.empty();
  }
}
