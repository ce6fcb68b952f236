package org.cotyla.cli.text;

import java.util.List;
import java.util.stream.Collectors;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.explain.Comparison;
import org.cotyla.explain.DecisionChange;
import org.cotyla.explain.RowChange;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.ShownAs;
import org.cotyla.value.PossibleValues;

/** Decisions that would come to something else, before and after, with the rows that do it. */
final class SupposedDecisions {

  private static final int MOST_ROWS = 3;

  private final Page page;
  private final Comparison comparison;
  private final KnownValues before;
  private final KnownValues after;
  private final RowChangeLines rows;

  SupposedDecisions(Page page, Comparison comparison) {
    this.page = page;
    this.comparison = comparison;
    this.before = new KnownValues(comparison.before());
    this.after = new KnownValues(comparison.after());
    this.rows = new RowChangeLines(page, comparison.after());
  }

  /** Those that an answer shows, each with the reason of its row. */
  void headlines() {
    List<DecisionChange> changes = changes(true);
    if (changes.isEmpty()) {
      return;
    }
    page.heading("Decisions that change");
    Columns columns = columns(changes);
    columns.row("", "before", "after");
    for (DecisionChange change : changes) {
      columns(columns, change);
      rows.reasons(4, change.rows());
    }
  }

  /** Those that an answer works with, on one line each. */
  void working() {
    List<DecisionChange> changes = changes(false);
    if (changes.isEmpty()) {
      return;
    }
    page.heading("On the way there");
    Columns columns = columns(changes);
    columns.row("", "before", "after");
    for (DecisionChange change : changes) {
      columns(columns, change);
      List<String> ids =
          change.rows().stream()
              .filter(row -> row.kind() != RowChange.Kind.EXCLUDED)
              .map(row -> row.row().id() + " " + row.kind().word())
              .toList();
      if (!ids.isEmpty()) {
        page.paragraph(4, "rows: " + Words.some(ids, MOST_ROWS));
      }
    }
  }

  private List<DecisionChange> changes(boolean shown) {
    return comparison.decisions().stream()
        .filter(change -> !change.table().hitPolicy().isList() && change.changesResult())
        .filter(change -> (change.table().shownAs() != ShownAs.WORKING) == shown)
        .toList();
  }

  private Columns columns(List<DecisionChange> changes) {
    return new Columns(
        page, changes.stream().mapToInt(change -> change.table().name().length()).max().orElse(0));
  }

  private void columns(Columns columns, DecisionChange change) {
    columns.row(
        change.table().name(),
        outputs(change.before(), change, before),
        outputs(change.after(), change, after));
  }

  private static String outputs(DecisionResult result, DecisionChange change, KnownValues known) {
    List<DecisionTable.Output> outputs = result.table().outputs();
    return change.outputs().stream()
        .map(
            output -> {
              PossibleValues value = result.outputs().get(output.output().name());
              String words = value == null ? "nothing" : known.inWords(output.output(), value);
              return outputs.size() == 1 ? words : output.output().name() + " " + words;
            })
        .collect(Collectors.joining("; "));
  }
}
