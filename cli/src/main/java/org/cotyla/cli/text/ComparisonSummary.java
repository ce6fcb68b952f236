package org.cotyla.cli.text;

import java.util.List;
import java.util.Optional;
import org.cotyla.compare.DecisionComparison;
import org.cotyla.compare.Impact;
import org.cotyla.compare.ProtocolComparison;
import org.cotyla.compare.ProtocolComparison.Meaning;
import org.cotyla.compare.RankingComparison;
import org.cotyla.compare.Verdict;

/** The answer in short: whether the two mean the same, and how far the difference reaches. */
final class ComparisonSummary {

  private static final int MOST_NAMES = 4;

  private final Page page;

  ComparisonSummary(Page page) {
    this.page = page;
  }

  void write(ProtocolComparison comparison, Optional<Impact> impact) {
    page.heading("In short");
    page.paragraph(
        2,
        switch (comparison.meaning()) {
          case SAME ->
              "The two are the same in meaning: proven for every decision and ranking, over every"
                  + " case.";
          case DIFFERENT -> "The two differ in meaning.";
          case NOT_PROVEN ->
              "No difference was found, but not everything could be proven the same.";
        });
    onlyWhatIsTaken(comparison);
    decisions("gives something else", "give something else", comparison, Verdict.DIFFERS, true);
    decisions("can follow", "can follow", comparison, Verdict.DIFFERS, false);
    for (RankingComparison ranking : comparison.rankings()) {
      ranking(ranking);
    }
    undecided(comparison);
    proven(comparison);
    int ids = comparison.rowIds().size();
    if (ids > 0) {
      page.marked(
          2,
          Mark.WARNING,
          Words.count(ids, "row id", "row ids")
              + " that old plans may name "
              + (ids == 1 ? "is" : "are")
              + " gone or "
              + (ids == 1 ? "stands" : "stand")
              + " elsewhere");
    }
    impact.ifPresent(
        found ->
            page.paragraph(
                2,
                "past cases: "
                    + found.changed()
                    + " of "
                    + found.cases()
                    + " get something else"
                    + (found.setAside().isEmpty()
                        ? ""
                        : ", "
                            + Words.count(found.setAside().size(), "was", "were")
                            + " set aside")));
  }

  private void decisions(
      String one, String several, ProtocolComparison comparison, Verdict verdict, boolean edited) {
    List<String> names =
        comparison.decisions().stream()
            .filter(decision -> decision.verdict() == verdict && decision.edited() == edited)
            .map(DecisionComparison::name)
            .toList();
    if (!names.isEmpty()) {
      String verb = names.size() == 1 ? one : several;
      page.paragraph(
          2,
          Words.count(names.size(), "decision")
              + " "
              + verb
              + ": "
              + Words.some(names, MOST_NAMES));
    }
  }

  private void ranking(RankingComparison ranking) {
    switch (ranking.first()) {
      case DIFFERS -> page.paragraph(2, "first " + ranking.name() + ": can be another");
      case UNDECIDED ->
          page.paragraph(2, "first " + ranking.name() + ": undecided whether it can be another");
      case PROVEN_SAME -> points(ranking);
      case INCOMPARABLE -> page.paragraph(2, "first " + ranking.name() + ": cannot be compared");
      case SAME, ADDED, REMOVED -> {}
    }
  }

  private void points(RankingComparison ranking) {
    String first = "first " + ranking.name() + ": never another (proven), ";
    if (ranking.verdict() == Verdict.DIFFERS) {
      page.paragraph(2, first + "but options, points or rule-outs differ");
    } else if (!ranking.verdict().isSame()) {
      page.paragraph(2, first + "but undecided whether points or rule-outs differ");
    }
  }

  /** Where the two differ in nothing that they decide, the edits say what it is. */
  private void onlyWhatIsTaken(ProtocolComparison comparison) {
    boolean decided =
        comparison.decisions().stream().allMatch(one -> one.verdict().isSame())
            && comparison.rankings().stream().allMatch(one -> one.verdict().isSame());
    if (decided && comparison.meaning() == Meaning.DIFFERENT) {
      page.paragraph(
          2,
          "In every case that both take they decide the same: proven. What differs is which cases"
              + " they take, or what there is to choose from; it stands under What was edited.");
    }
  }

  private void undecided(ProtocolComparison comparison) {
    List<String> names =
        comparison.decisions().stream()
            .filter(
                decision ->
                    decision.verdict() == Verdict.UNDECIDED
                        || decision.verdict() == Verdict.INCOMPARABLE)
            .map(DecisionComparison::name)
            .toList();
    if (!names.isEmpty()) {
      page.marked(2, Mark.OPEN, "not decided: " + Words.some(names, MOST_NAMES));
    }
    if (!comparison.contradictions().isEmpty()) {
      page.marked(
          2,
          Mark.OPEN,
          "cases were left out in which these contradict themselves: "
              + Words.some(comparison.contradictions(), MOST_NAMES));
    }
  }

  private void proven(ProtocolComparison comparison) {
    List<String> names =
        comparison.decisions().stream()
            .filter(decision -> decision.verdict() == Verdict.PROVEN_SAME)
            .map(DecisionComparison::name)
            .toList();
    if (!names.isEmpty()) {
      page.paragraph(
          2, "written otherwise or reached, but proven the same: " + Words.some(names, MOST_NAMES));
    }
  }
}
