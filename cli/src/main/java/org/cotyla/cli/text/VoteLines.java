package org.cotyla.cli.text;

import java.util.Comparator;
import java.util.List;
import org.cotyla.evaluate.Contribution;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Row;
import org.cotyla.value.Value;

/** The lines that tell why an option stands where it does, one row each. */
final class VoteLines {

  private static final int INDENT = 5;
  private static final int MOST_OPEN = 6;

  private final Page page;
  private final Protocol protocol;
  private final KnownValues known;

  VoteLines(Page page, Protocol protocol, KnownValues known) {
    this.page = page;
    this.protocol = protocol;
    this.known = known;
  }

  /** Every row for and against, the weightiest first, then those that only may count. */
  void all(RankedOption option) {
    mayBeRuledOut(option);
    List<Contribution> certain =
        option.votes().stream()
            .filter(Contribution::isCertain)
            .sorted(Comparator.comparing(Contribution::points).reversed())
            .toList();
    certain.forEach(this::vote);
    List<Contribution> open =
        option.votes().stream().filter(contribution -> !contribution.isCertain()).toList();
    open.stream().limit(MOST_OPEN).forEach(this::vote);
    if (open.size() > MOST_OPEN) {
      page.marked(
          INDENT,
          Mark.OPEN,
          "and " + Words.count(open.size() - MOST_OPEN, "more row") + " that may count");
    }
    if (option.votes().isEmpty()) {
      page.paragraph(INDENT, "No row speaks for or against it.");
    }
  }

  void vote(Contribution contribution) {
    String points = Value.of(contribution.points().abs()).plain();
    boolean isFor = contribution.points().signum() >= 0;
    Row row = contribution.firing().row();
    if (contribution.isCertain()) {
      page.marked(INDENT, isFor ? Mark.FOR : Mark.AGAINST, points, reason(row));
    } else {
      String sign = isFor ? "+" : "-";
      page.marked(
          INDENT,
          Mark.OPEN,
          sign + points,
          "may count: " + reason(row) + known.waitsFor(contribution.firing()));
    }
  }

  void mayBeRuledOut(RankedOption option) {
    if (option.availability() != RankedOption.Availability.MAY_BE_RULED_OUT) {
      return;
    }
    List<Contribution> rulings = option.rulings();
    Contribution ruling = rulings.get(0);
    String more = rulings.size() > 1 ? " and " + (rulings.size() - 1) + " more" : "";
    page.marked(
        INDENT,
        Mark.OPEN,
        "may be ruled out: "
            + reason(ruling.firing().row())
            + known.waitsFor(ruling.firing())
            + more);
  }

  /** The option and the row that rules it out; others that do so too are counted. */
  void ruledOut(RankedOption option) {
    List<Contribution> rulings = option.rulings().stream().filter(Contribution::isCertain).toList();
    String more = rulings.size() > 1 ? " and " + (rulings.size() - 1) + " more" : "";
    page.marked(
        2, Mark.RULED_OUT, option.name() + ": " + reason(rulings.get(0).firing().row()) + more);
  }

  private String reason(Row row) {
    return row.because() + " " + Words.reference(row, protocol);
  }
}
