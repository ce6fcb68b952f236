package org.cotyla.cli.report;

import java.util.List;
import java.util.stream.Stream;
import org.cotyla.cli.text.Words;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankingResult;

/** The first options of each ranking as a picture of points for and against. */
final class RankingSection {

  private static final int MOST = 3;
  private static final int MOST_NAMED = 3;

  private final Sheet sheet;
  private final Markup markup;

  RankingSection(Sheet sheet) {
    this.sheet = sheet;
    this.markup = sheet.markup();
  }

  void write() {
    List<RankingResult> rankings =
        sheet.advice().rankings().stream().filter(one -> !one.inPlay().isEmpty()).toList();
    if (rankings.isEmpty()) {
      return;
    }
    markup.start("section", "aria-labelledby", "points");
    markup.leaf("h2", "Points for and against", "id", "points");
    markup.start("div", "class", "pair");
    rankings.forEach(this::figure);
    markup.end();
    markup.leaf(
        "p",
        "One piece is one row. Full: for; hatched: against; broken edge: may count. Diamond: the"
            + " certain sum; thin line: its range.",
        "class",
        "note");
    markup.end();
  }

  private void figure(RankingResult ranking) {
    List<RankedOption> inPlay = ranking.inPlay();
    List<RankedOption> shown = inPlay.subList(0, Math.min(MOST, inPlay.size()));
    String name = ranking.ranking().name();
    markup.start("figure");
    new VoteBars(shown).draw(sheet, "Points for and against each " + name);
    markup.start("figcaption");
    markup.text(Words.count(inPlay.size(), name) + " in play");
    List<String> rest =
        inPlay.stream()
            .skip(MOST)
            .map(option -> option.name() + " " + Reasons.points(option.points()))
            .toList();
    markup.text(rest.isEmpty() ? "." : "; then " + Words.some(rest, MOST_NAMED) + ".");
    int out = ranking.ruledOut().size();
    if (out > 0) {
      markup.text(" ").link("ruled-out", out + (out == 1 ? " is" : " are") + " ruled out");
      markup.text(".");
    }
    if (!ranking.firstIsCertain() && !ranking.leaderStandsOut()) {
      markup.text(
          " No option stands out yet: nothing certain sets the first apart from the next, so they"
              + " are in the order of the protocol.");
    }
    shown.stream()
        .filter(option -> !option.tiedWith().isEmpty())
        .findFirst()
        .ifPresent(
            option ->
                markup.text(
                    " In a tie, put in the order of the protocol: "
                        + Words.and(
                            Stream.concat(Stream.of(option.name()), option.tiedWith().stream())
                                .toList())
                        + "."));
    markup.end().end();
  }
}
