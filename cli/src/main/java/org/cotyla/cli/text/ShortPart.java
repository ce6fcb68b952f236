package org.cotyla.cli.text;

import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;

/** The answer in short: what comes first in each ranking, and whether that is certain. */
final class ShortPart {

  private final Page page;

  ShortPart(Page page) {
    this.page = page;
  }

  void write(Recommendation advice) {
    if (advice.rankings().isEmpty()) {
      return;
    }
    page.heading("In short");
    for (RankingResult ranking : advice.rankings()) {
      String name = ranking.ranking().name();
      String first = first(ranking);
      page.paragraph(2, "first " + name + ": " + first + " (" + certainty(ranking, advice) + ")");
    }
  }

  /** Names no option where nothing certain sets it apart from the next. */
  private static String first(RankingResult ranking) {
    if (ranking.firstIsCertain() || ranking.leaderStandsOut()) {
      return ranking.leader().map(RankedOption::name).orElse("every option is ruled out");
    }
    long possible = ranking.options().stream().filter(RankedOption::canBeFirst).count();
    return "open: " + possible + " of " + ranking.options().size() + " can still come first";
  }

  private static String certainty(RankingResult ranking, Recommendation advice) {
    if (ranking.firstIsCertain()) {
      return "certain";
    }
    String name = ranking.ranking().name();
    int open =
        (int)
            advice.missing().stream()
                .filter(missing -> missing.mayChangeFirst().contains(name))
                .count();
    return open == 0
        ? "not certain"
        : "not certain, " + Words.count(open, "open finding") + " may change it";
  }
}
