package org.cotyla.cli.text;

import java.util.List;
import java.util.stream.Collectors;
import org.cotyla.compare.DecisionComparison;
import org.cotyla.compare.ProtocolComparison;
import org.cotyla.compare.RankingComparison;
import org.cotyla.compare.Verdict;

/** Rankings and decisions that were not edited themselves, but that an edit reaches. */
final class FollowingPart {

  private final Page page;

  FollowingPart(Page page) {
    this.page = page;
  }

  void write(ProtocolComparison comparison) {
    List<DecisionComparison> following = comparison.following();
    List<RankingComparison> rankings =
        comparison.rankings().stream().filter(one -> one.verdict() != Verdict.SAME).toList();
    if (following.isEmpty() && rankings.isEmpty()) {
      return;
    }
    page.heading("What follows from that");
    rankings.forEach(this::ranking);
    names("can differ", following, Verdict.DIFFERS);
    names("never differ, which is proven", following, Verdict.PROVEN_SAME);
    names("undecided whether they can differ", following, Verdict.UNDECIDED);
    names("cannot be compared", following, Verdict.INCOMPARABLE);
  }

  private void ranking(RankingComparison ranking) {
    String first = "first " + ranking.name();
    switch (ranking.first()) {
      case DIFFERS -> {
        page.paragraph(2, first + " can be another, for example");
        ranking
            .changes()
            .forEach(
                change ->
                    page.marked(4, Mark.ITEM, "was " + change.was() + ", is now " + change.now()));
      }
      case PROVEN_SAME, SAME -> page.paragraph(2, first + " is never another: proven");
      default ->
          page.marked(
              2,
              Mark.OPEN,
              first + ": " + ranking.first().word() + ranking.note().map(n -> ", " + n).orElse(""));
    }
  }

  private void names(String heading, List<DecisionComparison> all, Verdict verdict) {
    List<String> names =
        all.stream()
            .filter(decision -> decision.verdict() == verdict)
            .map(DecisionComparison::name)
            .toList();
    if (!names.isEmpty()) {
      page.hanging("  ", heading + ": " + names.stream().collect(Collectors.joining(", ")));
    }
  }
}
