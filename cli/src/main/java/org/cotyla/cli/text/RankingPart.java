package org.cotyla.cli.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cotyla.evaluate.Contribution;
import org.cotyla.evaluate.MissingDatum;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.protocol.Option;

/**
 * A ranking: the first place with everything for and against it, the next ones, those ruled out.
 */
final class RankingPart {

  private static final int NEXT_WITH_REASON = 3;
  private static final int MOST_OPTIONS = 4;
  private static final int MOST_FINDINGS = 8;

  private final Page page;
  private final Recommendation advice;
  private final VoteLines votes;

  RankingPart(Page page, Recommendation advice, KnownValues known) {
    this.page = page;
    this.advice = advice;
    this.votes = new VoteLines(page, advice.protocol(), known);
  }

  void write(RankingResult result) {
    page.heading(result.ranking().name());
    Optional<RankedOption> leader = result.leader();
    if (leader.isEmpty()) {
      page.marked(2, Mark.WARNING, "every option is ruled out");
    } else {
      if (!result.firstIsCertain() && !result.leaderStandsOut()) {
        page.marked(
            2,
            Mark.OPEN,
            "No option stands out yet: nothing certain sets the first apart from the next, so they"
                + " are in the order of the protocol.");
      }
      first(result, leader.get());
      next(result.inPlay().subList(1, result.inPlay().size()));
    }
    if (!result.ruledOut().isEmpty()) {
      page.paragraph(2, "Ruled out:");
      result.ruledOut().forEach(votes::ruledOut);
    }
  }

  private void first(RankingResult result, RankedOption leader) {
    page.hanging("  1. ", title(leader));
    page.paragraph(5, certainty(result, leader));
    if (!result.firstIsCertain()) {
      List<String> open = decidedBy(result.ranking().name());
      if (!open.isEmpty()) {
        page.paragraph(5, "It hangs on: " + Words.some(open, MOST_FINDINGS) + ".");
      }
    }
    votes.all(leader);
    needs(leader.option());
  }

  private static String certainty(RankingResult result, RankedOption leader) {
    if (result.firstIsCertain()) {
      return "First place is certain: no open finding can change it.";
    }
    List<String> others =
        new ArrayList<>(
            result.inPlay().stream()
                .filter(option -> option.canBeFirst() && option != leader)
                .map(RankedOption::name)
                .toList());
    if (result.first().orNothing()) {
      others.add("none at all");
    }
    return "First place is not certain; it could also go to " + named(others) + ".";
  }

  private static String named(List<String> options) {
    return options.size() <= MOST_OPTIONS
        ? Words.or(options)
        : Words.some(options, MOST_OPTIONS - 1);
  }

  private List<String> decidedBy(String ranking) {
    return advice.missing().stream()
        .filter(missing -> missing.mayChangeFirst().contains(ranking))
        .map(MissingDatum::datum)
        .map(datum -> datum.field().name())
        .toList();
  }

  private void next(List<RankedOption> options) {
    options.stream().limit(NEXT_WITH_REASON).forEach(this::nextWithReason);
    List<String> rest =
        options.stream()
            .skip(NEXT_WITH_REASON)
            .map(option -> option.name() + " " + option.points().plain())
            .toList();
    if (!rest.isEmpty()) {
      page.paragraph(2, "Then: " + String.join(", ", rest));
    }
  }

  private void nextWithReason(RankedOption option) {
    String place = option.place() + ". ";
    page.hanging(" ".repeat(Math.max(0, 5 - place.length())) + place, title(option));
    strongest(option, 1).ifPresent(votes::vote);
    strongest(option, -1).ifPresent(votes::vote);
    votes.mayBeRuledOut(option);
  }

  /** The weightiest row for it (sign 1) or against it (sign -1); a certain one before others. */
  private static Optional<Contribution> strongest(RankedOption option, int sign) {
    return option.votes().stream()
        .filter(contribution -> contribution.points().signum() == sign)
        .max(
            Comparator.comparing(Contribution::isCertain)
                .thenComparing(contribution -> contribution.points().abs()));
  }

  private static String title(RankedOption option) {
    String points = option.points().plain();
    String word = points.equals("1") ? " point" : " points";
    String tie =
        option.tiedWith().isEmpty()
            ? ""
            : "; a tie with " + Words.and(option.tiedWith()) + ", put in the order of the protocol";
    return option.name() + ": " + points + word + tie;
  }

  private void needs(Option option) {
    if (!option.needs().isEmpty()) {
      page.paragraph(5, "Needs: " + String.join("; ", option.needs()) + ".");
    }
    option
        .leadTimeDays()
        .ifPresent(days -> page.paragraph(5, "Lead time: " + Words.count(days, "day") + "."));
  }
}
