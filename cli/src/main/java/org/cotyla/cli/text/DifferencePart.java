package org.cotyla.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.cotyla.compare.DecisionComparison;
import org.cotyla.compare.ProtocolComparison;
import org.cotyla.compare.Region;
import org.cotyla.compare.Verdict;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.finding.Findings;

/** The findings in which an edited decision gives something else, each with an example. */
final class DifferencePart {

  private final Page page;

  DifferencePart(Page page) {
    this.page = page;
  }

  void write(ProtocolComparison comparison) {
    for (DecisionComparison decision : comparison.edited()) {
      if (decision.verdict() == Verdict.ADDED || decision.verdict() == Verdict.REMOVED) {
        continue;
      }
      page.heading(decision.name());
      switch (decision.verdict()) {
        case PROVEN_SAME ->
            page.paragraph(2, "The same in every case: proven. What was edited changes nothing.");
        case UNDECIDED -> page.marked(2, Mark.OPEN, "undecided" + because(decision));
        case INCOMPARABLE -> page.marked(2, Mark.OPEN, "cannot be compared" + because(decision));
        default -> regions(decision);
      }
    }
  }

  private static String because(DecisionComparison decision) {
    return decision.note().map(why -> ": " + why).orElse("");
  }

  private void regions(DecisionComparison decision) {
    for (Region region : decision.regions()) {
      page.marked(2, Mark.ITEM, region.sentence());
      page.hanging("      example: ", example(region.example().findings()));
    }
    if (decision.more()) {
      page.paragraph(2, "and more, which are not listed");
    }
    decision
        .note()
        .ifPresent(why -> page.marked(2, Mark.OPEN, "whether that is all is undecided: " + why));
  }

  /** The stage, then whatever is stated; what is not makes no difference. */
  static String example(Findings findings) {
    List<String> stated = new ArrayList<>();
    for (Datum datum : findings.data()) {
      if (datum.knowledge() == Knowledge.RECORDED) {
        stated.add(datum.field().name() + " " + Amounts.of(datum.value(), datum.field()));
      }
    }
    return findings.stage()
        + stated.stream().collect(Collectors.joining(", ", stated.isEmpty() ? "" : ", ", ""));
  }
}
