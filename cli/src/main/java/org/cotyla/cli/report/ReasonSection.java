package org.cotyla.cli.report;

import java.util.Comparator;
import java.util.List;
import org.cotyla.evaluate.Contribution;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.protocol.Row;
import org.cotyla.value.Value;

/** The rows behind the points of the first options, so that each sum can be checked by hand. */
final class ReasonSection {

  private static final int MOST = 3;

  private final Sheet sheet;
  private final Markup markup;

  ReasonSection(Sheet sheet) {
    this.sheet = sheet;
    this.markup = sheet.markup();
  }

  void write() {
    List<RankingResult> rankings = sheet.advice().rankings();
    if (rankings.isEmpty()) {
      return;
    }
    markup.start("section", "aria-labelledby", "reasons");
    markup.leaf("h3", "The rows behind the points", "id", "reasons");
    markup.start("table", "class", "reasons");
    markup.start("thead").start("tr");
    List.of("Points", "Because", "Row and source")
        .forEach(text -> markup.leaf("th", text, "scope", "col"));
    markup.end().end();
    for (RankingResult ranking : rankings) {
      ranking.inPlay().stream().limit(MOST).forEach(option -> option(ranking, option));
    }
    markup.end().end();
  }

  private void option(RankingResult ranking, RankedOption option) {
    markup.start("tbody").start("tr", "class", "group");
    String title =
        ranking.ranking().name()
            + " "
            + option.place()
            + ": "
            + option.name()
            + ", "
            + Reasons.inPoints(option.points());
    markup.leaf("th", title, "colspan", "3", "scope", "rowgroup").end();
    List<Contribution> votes =
        option.votes().stream()
            .sorted(
                Comparator.comparing(Contribution::isCertain)
                    .thenComparing(Contribution::points)
                    .reversed())
            .toList();
    votes.forEach(this::vote);
    if (votes.isEmpty()) {
      markup.start("tr");
      markup.leaf("td", "No row speaks for or against it.", "colspan", "3").end();
    }
    markup.end();
  }

  private void vote(Contribution vote) {
    Row row = vote.firing().row();
    String points = Value.of(vote.points().abs()).plain();
    String signed = (vote.points().signum() < 0 ? "−" : "+") + points;
    markup.start("tr");
    markup.start("td", "class", "points", "data-label", "Points").text(signed);
    if (!vote.isCertain()) {
      markup.text(" ").leaf("span", "perhaps", "class", "open");
    }
    markup.end();
    markup.start("td", "data-label", "Because").text(row.because());
    markup.text(vote.isCertain() ? "" : sheet.known().waitsFor(vote.firing())).end();
    markup.start("td", "data-label", "Row and source");
    sheet.rowLink(row);
    markup.text(" ").start("span", "class", "sources");
    markup.text(SourceSection.inShort(sheet.advice().protocol(), row)).end();
    markup.end().end();
  }
}
