package org.cotyla.cli.text;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.evaluate.Standing;
import org.cotyla.expression.Symbol;
import org.cotyla.issue.CellRef;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Vote;
import org.cotyla.value.Truth;
import org.cotyla.value.Value;

/** Every row that fired, decision by decision in order of need, with all that it saw. */
final class TracePart {

  private final Page page;
  private final Protocol protocol;
  private final KnownValues known;
  private final List<DecisionResult> decisions;

  TracePart(Page page, Recommendation advice, KnownValues known) {
    this.page = page;
    this.protocol = advice.protocol();
    this.known = known;
    this.decisions = advice.decisions();
  }

  void write() {
    page.heading("Trace: every row that fired, in order of need");
    decisions.forEach(this::decision);
    Set<String> cited = new LinkedHashSet<>();
    decisions.stream()
        .flatMap(decision -> decision.firings().stream())
        .forEach(firing -> cited.addAll(firing.row().sources()));
    page.heading("Sources of these rows");
    protocol.sources().stream()
        .filter(source -> cited.contains(source.key()))
        .forEach(
            source ->
                page.marked(
                    2,
                    Mark.ITEM,
                    source.key() + " (" + source.certainty().word() + "): " + source.citation()));
  }

  private void decision(DecisionResult result) {
    page.blank();
    String policy = " (hit policy " + result.table().hitPolicy().letters() + ")";
    page.paragraph(0, result.table().name() + policy);
    result.firings().stream().filter(Firing::counts).forEach(this::firing);
    if (result.mayBeByDefault()) {
      String lead = result.byDefault() ? "no row matches" : "it may be that no row matches";
      page.paragraph(
          2, lead + result.table().otherwise().map(row -> ": " + because(row)).orElse(""));
    }
    result.firings().stream()
        .filter(firing -> firing.standing() == Standing.SET_ASIDE)
        .forEach(firing -> page.paragraph(2, heading(firing) + ", would give " + gives(firing)));
    if (result.firings().isEmpty() && !result.mayBeByDefault()) {
      page.paragraph(2, "no row matches");
    }
  }

  private static String heading(Firing firing) {
    return firing.row().id()
        + " at "
        + firing.row().at().plain()
        + ": "
        + (firing.certain() ? "matches" : "may match")
        + ", "
        + firing.standing().word();
  }

  private void firing(Firing firing) {
    page.paragraph(2, heading(firing));
    tests(firing);
    page.paragraph(4, (firing.row().vote().isPresent() ? "votes: " : "gives ") + gives(firing));
    page.paragraph(4, "because " + because(firing.row()));
  }

  private void tests(Firing firing) {
    List<Row.Test> tests = firing.row().tests();
    for (int i = 0; i < tests.size(); i++) {
      Row.Test test = tests.get(i);
      if (!test.prepared().isAnything()) {
        Symbol input = firing.table().inputs().get(i).symbol();
        page.marked(
            4,
            mark(firing.truths().get(i)),
            input.name()
                + " = "
                + known.inWords(input, firing.seen().get(i))
                + " meets "
                + test.text()
                + known.endpoints(test)
                + " at "
                + inSheet(test.at()));
      }
    }
  }

  /** The cell without its sheet, which stands with the row's id. */
  private static String inSheet(CellRef cell) {
    return cell.plain().substring(cell.sheet().length() + 1);
  }

  private static Mark mark(Truth truth) {
    return switch (truth) {
      case TRUE -> Mark.FOR;
      case FALSE -> Mark.AGAINST;
      case OPEN -> Mark.OPEN;
    };
  }

  private static String gives(Firing firing) {
    return firing.row().vote().map(TracePart::vote).orElseGet(() -> Words.results(firing));
  }

  private static String vote(Vote vote) {
    boolean weighs = vote.points().signum() > 0;
    String points = weighs ? " by " + Value.of(vote.points()).plain() : "";
    return vote.effect().word() + " " + vote.option() + points;
  }

  private String because(Row row) {
    return row.because() + " " + Words.reference(row, protocol);
  }
}
