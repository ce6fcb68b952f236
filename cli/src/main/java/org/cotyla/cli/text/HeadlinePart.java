package org.cotyla.cli.text;

import java.util.ArrayList;
import java.util.List;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.MissingDatum;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/** What the findings point to: each headline decision with the reason of the row that decides. */
final class HeadlinePart {

  private static final int MOST_ROWS = 3;
  private static final int MOST_FINDINGS = 6;

  private final Page page;
  private final Recommendation advice;
  private final KnownValues known;

  HeadlinePart(Page page, Recommendation advice, KnownValues known) {
    this.page = page;
    this.advice = advice;
    this.known = known;
  }

  void write(String heading, List<DecisionResult> decisions) {
    List<DecisionResult> shown =
        decisions.stream().filter(decision -> !decision.table().votes()).toList();
    if (shown.isEmpty()) {
      return;
    }
    page.heading(heading);
    shown.forEach(this::decision);
  }

  private void decision(DecisionResult result) {
    if (result.table().hitPolicy().isList()) {
      page.paragraph(2, result.table().name() + ":");
      new ListPart(page, known).entries(result);
      return;
    }
    String line = result.table().name() + ": " + outputs(result);
    if (result.isCertain()) {
      page.paragraph(2, line);
    } else {
      page.marked(0, Mark.OPEN, line + " (open)");
    }
    reasons(result);
    if (!result.isCertain()) {
      waitsFor(result);
    }
  }

  private String outputs(DecisionResult result) {
    List<DecisionTable.Output> outputs = result.table().outputs();
    List<String> names = OutputNames.inShort(outputs);
    List<String> words = new ArrayList<>();
    for (int i = 0; i < outputs.size(); i++) {
      Symbol symbol = outputs.get(i).symbol();
      PossibleValues value = result.outputs().get(symbol.name());
      String text = value == null ? "nothing" : known.inWords(symbol, value);
      words.add(outputs.size() == 1 ? text : names.get(i) + " " + text);
    }
    return String.join("; ", words);
  }

  private void reasons(DecisionResult result) {
    List<Firing> counting = result.counting().stream().filter(row -> adds(row, result)).toList();
    boolean several = counting.size() > 1 || result.mayBeByDefault();
    List<String> lines = new ArrayList<>();
    for (Firing firing : counting) {
      String gives = several ? Words.results(firing) + ": " : "";
      lines.add(gives + because(firing.row()));
    }
    if (result.mayBeByDefault()) {
      String lead = result.byDefault() ? "" : "if no row matches: ";
      lines.add(
          result.table().otherwise().map(row -> lead + because(row)).orElse(lead + "nothing"));
    }
    int shown = lines.size() == MOST_ROWS + 1 ? lines.size() : MOST_ROWS;
    lines.stream().limit(shown).forEach(line -> page.paragraph(4, line));
    if (lines.size() > shown) {
      page.paragraph(4, "and " + (lines.size() - shown) + " more rows that may decide");
    }
  }

  /** Whether a row has a part in a number that is worked out from all rows. */
  private static boolean adds(Firing firing, DecisionResult result) {
    PossibleValues gives = firing.results().isEmpty() ? null : firing.results().get(0);
    return switch (result.table().hitPolicy()) {
      case SUM -> !PossibleValues.of(Value.of(0)).equals(gives);
      case MINIMUM, MAXIMUM -> !result.isCertain() || result.outputs().containsValue(gives);
      default -> true;
    };
  }

  private void waitsFor(DecisionResult result) {
    String name = result.table().name();
    List<String> open =
        advice.missing().stream()
            .filter(missing -> missing.mayChange().contains(name))
            .map(MissingDatum::datum)
            .map(datum -> datum.field().name())
            .toList();
    if (!open.isEmpty()) {
      page.paragraph(4, "hangs on: " + Words.some(open, MOST_FINDINGS));
    }
  }

  private static String because(Row row) {
    return row.because() + " [" + row.id() + "]";
  }
}
