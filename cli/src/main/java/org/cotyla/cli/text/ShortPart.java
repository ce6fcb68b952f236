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
      String first = ranking.leader().map(RankedOption::name).orElse("every option is ruled out");
      page.paragraph(2, "first " + name + ": " + first + " (" + certainty(ranking, advice) + ")");
    }
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
