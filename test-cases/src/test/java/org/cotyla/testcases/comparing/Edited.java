package org.cotyla.testcases.comparing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.cotyla.compile.ProtocolCompiler;
import org.cotyla.draft.DecisionDraft;
import org.cotyla.draft.Line;
import org.cotyla.draft.ProtocolDraft;
import org.cotyla.draft.RowDraft;
import org.cotyla.draft.Text;
import org.cotyla.expression.Dialect;
import org.cotyla.expression.StandardFunctions;
import org.cotyla.issue.Issues;
import org.cotyla.protocol.Protocol;

/** Copies of a protocol's text with one edit, as a person would make it in the sheet. */
final class Edited {

  private static final Set<String> ORDER_COUNTS = Set.of("F", "P", "R", "O");

  private final ProtocolDraft draft;
  private final Random random;

  Edited(ProtocolDraft draft, long seed) {
    this.draft = draft;
    this.random = new Random(seed);
  }

  /** The protocol of a draft; nothing when the edit made it faulty. */
  static Optional<Protocol> compile(ProtocolDraft draft) {
    Issues issues = new Issues();
    Optional<Protocol> protocol =
        new ProtocolCompiler(StandardFunctions.all(), Dialect.KIND).compile(draft, issues);
    return issues.hasErrors() ? Optional.empty() : protocol;
  }

  /** Rows in another order where the hit policy does not look at it. */
  ProtocolDraft reordered() {
    return each(
        decision -> {
          List<RowDraft> rows = new ArrayList<>(decision.rows());
          if (!ORDER_COUNTS.contains(decision.hitPolicy().text())) {
            Collections.shuffle(rows, random);
          }
          return with(decision, rows);
        });
  }

  /** Other ids and reasons. */
  ProtocolDraft renamed() {
    return each(
        decision ->
            with(
                decision,
                decision.rows().stream()
                    .map(
                        row ->
                            row.id().text().equals("default")
                                ? row
                                : new RowDraft(
                                    text(row.id(), "N" + row.id().text()),
                                    row.tests(),
                                    row.results(),
                                    text(row.because(), "Another reason."),
                                    row.sources()))
                    .toList()));
  }

  /** Spaces, signs and cells that say the same in other words. */
  ProtocolDraft restyled() {
    return each(
        decision ->
            with(
                decision,
                decision.rows().stream()
                    .map(
                        row ->
                            new RowDraft(
                                row.id(),
                                row.tests().stream().map(Edited::restyled).toList(),
                                row.results(),
                                row.because(),
                                row.sources()))
                    .toList()));
  }

  private static Text restyled(Text cell) {
    String text = cell.text();
    if (text.startsWith(">=")) {
      text = "≥  " + text.substring(2).strip();
    } else if (text.matches("<= *\\d+")) {
      text = "not(> " + text.substring(2).strip() + ")";
    } else if (text.matches("\\[\\d+\\.\\.\\d+]")) {
      text = "[ " + text.substring(1).replace("..", " .. ").replace("]", " ]");
    }
    return text(cell, text);
  }

  /** One row with an open cell under a number in two: up to 2, and above 2. */
  Optional<ProtocolDraft> split() {
    List<String> numbers =
        draft.fields().stream()
            .filter(field -> field.get("type").text().equals("number"))
            .filter(field -> field.get("kind").text().equals("given"))
            .filter(field -> !field.get("stage").text().equals("theatre"))
            .map(field -> field.get("name").text())
            .toList();
    for (DecisionDraft decision : shuffled()) {
      for (int column = 0; column < decision.when().size(); column++) {
        if (numbers.contains(decision.when().get(column).text())) {
          for (int i = 0; i < decision.rows().size(); i++) {
            RowDraft row = decision.rows().get(i);
            if (row.tests().get(column).isNone() && !row.id().text().equals("default")) {
              List<RowDraft> rows = new ArrayList<>(decision.rows());
              rows.set(i, withTest(row, column, "<= 2", ""));
              rows.add(i + 1, withTest(row, column, "> 2", "-second"));
              return Optional.of(replaced(decision, with(decision, rows)));
            }
          }
        }
      }
    }
    return Optional.empty();
  }

  /** One row less, or with another row's results or test: nearly always a difference. */
  ProtocolDraft changed() {
    DecisionDraft decision = shuffled().get(0);
    List<RowDraft> rows = new ArrayList<>(decision.rows());
    int at = random.nextInt(rows.size());
    RowDraft row = rows.get(at);
    RowDraft other = rows.get(random.nextInt(rows.size()));
    switch (random.nextInt(3)) {
      case 0 -> {
        if (rows.size() > 1) {
          rows.remove(at);
        }
      }
      case 1 ->
          rows.set(
              at,
              new RowDraft(row.id(), row.tests(), other.results(), row.because(), row.sources()));
      default -> {
        if (!other.id().text().equals("default") && !row.id().text().equals("default")) {
          rows.set(
              at,
              new RowDraft(row.id(), other.tests(), row.results(), row.because(), row.sources()));
        }
      }
    }
    return replaced(decision, with(decision, rows));
  }

  private List<DecisionDraft> shuffled() {
    List<DecisionDraft> decisions = new ArrayList<>(draft.decisions());
    Collections.shuffle(decisions, random);
    return decisions;
  }

  private static RowDraft withTest(RowDraft row, int column, String test, String idEnd) {
    List<Text> tests = new ArrayList<>(row.tests());
    tests.set(column, text(tests.get(column), test));
    return new RowDraft(
        text(row.id(), row.id().text() + idEnd),
        tests,
        row.results(),
        row.because(),
        row.sources());
  }

  private static Text text(Text cell, String text) {
    return new Text(text, cell.at());
  }

  private static DecisionDraft with(DecisionDraft decision, List<RowDraft> rows) {
    return new DecisionDraft(
        decision.name(),
        decision.hitPolicy(),
        decision.asks(),
        decision.ranks(),
        decision.shownAs(),
        decision.when(),
        decision.then(),
        rows);
  }

  private ProtocolDraft replaced(DecisionDraft was, DecisionDraft is) {
    return each(decision -> decision == was ? is : decision);
  }

  private ProtocolDraft each(java.util.function.UnaryOperator<DecisionDraft> edit) {
    List<Line> same = draft.fields();
    return new ProtocolDraft(
        draft.origin(),
        draft.about(),
        same,
        draft.options(),
        draft.calculations(),
        draft.sources(),
        draft.changes(),
        draft.decisions().stream().map(edit).toList());
  }
}
