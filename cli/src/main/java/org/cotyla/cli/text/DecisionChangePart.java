package org.cotyla.cli.text;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.MissingDatum;
import org.cotyla.explain.Comparison;
import org.cotyla.explain.DecisionChange;
import org.cotyla.explain.DecisionChange.OutputChange;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.ShownAs;
import org.cotyla.value.PossibleValues;

/** Headline decisions that come to something else, each with the rows that make the difference. */
final class DecisionChangePart {

  private static final int MOST_FINDINGS = 6;

  private final Page page;
  private final Comparison comparison;
  private final KnownValues before;
  private final KnownValues after;
  private final RowChangeLines rows;

  DecisionChangePart(Page page, Comparison comparison) {
    this.page = page;
    this.comparison = comparison;
    this.before = new KnownValues(comparison.before());
    this.after = new KnownValues(comparison.after());
    this.rows = new RowChangeLines(page, comparison.after());
  }

  /** The headlines that lead to the rankings, where they change. */
  void writeChanged(String heading, FollowOn follow) {
    List<DecisionChange> changes =
        comparison.decisions().stream()
            .filter(change -> isShown(change.table()))
            .filter(change -> !follow.followsFromRanking(change.table()))
            .toList();
    if (!changes.isEmpty()) {
      page.heading(heading);
      changes.forEach(this::change);
    }
  }

  /** All headlines that follow from the rankings, since the plan goes on with them. */
  void writeWhatFollows(String heading, FollowOn follow) {
    List<DecisionResult> following =
        comparison.after().shownAs(ShownAs.HEADLINE).stream()
            .filter(result -> isShown(result.table()))
            .filter(result -> follow.followsFromRanking(result.table()))
            .toList();
    if (!following.isEmpty()) {
      page.heading(heading);
      following.forEach(this::now);
    }
  }

  /** Lists are shown as such, also those that are headlines. */
  static boolean isShown(DecisionTable table) {
    return table.shownAs() == ShownAs.HEADLINE && !table.votes() && !table.hitPolicy().isList();
  }

  private void now(DecisionResult result) {
    Optional<DecisionChange> change = comparison.decision(result.table().name());
    if (change.isPresent()) {
      change(change.get());
    } else {
      page.paragraph(2, result.table().name() + ": " + outputs(result) + ", as planned");
    }
  }

  private void change(DecisionChange change) {
    String name = change.table().name();
    String now = name + ": " + outputs(change.after());
    if (change.changesResult()) {
      String was = change.outputs().stream().map(this::was).collect(Collectors.joining("; "));
      String line = now + "; the plan was " + was;
      if (change.after().isCertain()) {
        page.paragraph(2, line);
      } else {
        page.marked(0, Mark.OPEN, now + " (open); the plan was " + was);
      }
    } else {
      page.paragraph(2, now + ", as planned, but by other rows");
    }
    rows.reasons(4, change.rows());
    if (!change.after().isCertain()) {
      waitsFor(name);
    }
  }

  private String outputs(DecisionResult result) {
    List<DecisionTable.Output> outputs = result.table().outputs();
    return outputs.stream()
        .map(
            output -> {
              PossibleValues value = result.outputs().get(output.symbol().name());
              String words = value == null ? "nothing" : after.inWords(output.symbol(), value);
              return outputs.size() == 1 ? words : output.symbol().name() + " " + words;
            })
        .collect(Collectors.joining("; "));
  }

  private String was(OutputChange output) {
    Symbol symbol = output.output();
    boolean several =
        comparison.after().protocol().decisions().stream()
            .anyMatch(table -> table.gives().contains(symbol) && table.outputs().size() > 1);
    String words = before.inWords(symbol, output.before());
    return several ? symbol.name() + " " + words : words;
  }

  private void waitsFor(String decision) {
    List<String> open =
        comparison.after().missing().stream()
            .filter(missing -> missing.mayChange().contains(decision))
            .map(MissingDatum::datum)
            .map(datum -> datum.field().name())
            .toList();
    if (!open.isEmpty()) {
      page.paragraph(4, "hangs on: " + Words.some(open, MOST_FINDINGS));
    }
  }
}
