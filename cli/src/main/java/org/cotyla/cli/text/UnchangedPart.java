package org.cotyla.cli.text;

import java.util.ArrayList;
import java.util.List;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.explain.Comparison;
import org.cotyla.explain.RankingChange;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.ShownAs;

/** What is as planned, in one line. */
final class UnchangedPart {

  private final Page page;
  private final Comparison comparison;

  UnchangedPart(Page page, Comparison comparison) {
    this.page = page;
    this.comparison = comparison;
  }

  /** What was said to be as planned where it stands is not said again. */
  void write(FollowOn follow) {
    List<String> same = new ArrayList<>();
    comparison.rankings().stream()
        .filter(ranking -> ranking.options().isEmpty())
        .map(RankingChange::name)
        .forEach(same::add);
    for (DecisionTable table : comparison.after().protocol().decisions()) {
      boolean told = DecisionChangePart.isShown(table) && follow.followsFromRanking(table);
      if (table.shownAs() != ShownAs.WORKING && !told && !table.votes() && isSame(table)) {
        same.add(table.name());
      }
    }
    if (!same.isEmpty()) {
      page.blank();
      page.paragraph(0, "As planned: " + String.join(", ", same) + ".");
    }
  }

  private boolean isSame(DecisionTable table) {
    boolean changed =
        comparison.decision(table.name()).stream()
            .anyMatch(change -> !change.isList() || change.changesResult());
    return !changed && !(ListChangePart.isShown(table) && isEmpty(table));
  }

  private boolean isEmpty(DecisionTable table) {
    return comparison.after().decision(table.name()).stream()
        .allMatch(result -> result.counting().isEmpty() && !byDefault(result));
  }

  private static boolean byDefault(DecisionResult result) {
    return result.mayBeByDefault() && result.table().otherwise().isPresent();
  }
}
