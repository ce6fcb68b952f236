package org.cotyla.cli.report;

import java.util.List;
import org.cotyla.cli.text.Words;
import org.cotyla.evaluate.Contribution;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankedOption.Availability;
import org.cotyla.evaluate.RankingResult;

/** What is ruled out, or may be, with the reason of the row that does it. */
final class RuledOutSection {

  private final Sheet sheet;
  private final Markup markup;

  RuledOutSection(Sheet sheet) {
    this.sheet = sheet;
    this.markup = sheet.markup();
  }

  void write() {
    boolean any =
        sheet.advice().rankings().stream()
            .anyMatch(ranking -> !ranking.ruledOut().isEmpty() || !mayBe(ranking).isEmpty());
    if (!any) {
      return;
    }
    markup.start("section", "aria-labelledby", "ruled-out");
    markup.leaf("h2", "Ruled out", "id", "ruled-out");
    markup.start("table", "class", "ruled");
    markup.start("thead").start("tr");
    markup.leaf("th", "Option", "scope", "col");
    markup.leaf("th", "Because", "scope", "col");
    markup.end().end().start("tbody");
    for (RankingResult ranking : sheet.advice().rankings()) {
      ranking.ruledOut().forEach(option -> row(option, true));
      mayBe(ranking).forEach(option -> row(option, false));
    }
    markup.end().end().end();
  }

  private static List<RankedOption> mayBe(RankingResult ranking) {
    return ranking.options().stream()
        .filter(option -> option.availability() == Availability.MAY_BE_RULED_OUT)
        .toList();
  }

  private void row(RankedOption option, boolean certain) {
    List<Contribution> rulings =
        option.rulings().stream().filter(row -> !certain || row.isCertain()).toList();
    markup.start("tr");
    markup.start("th", "scope", "row").text((certain ? "× " : "? ") + option.name());
    if (!certain) {
      markup.text(" ").leaf("span", "perhaps", "class", "open");
    }
    markup.end();
    markup.start("td", "data-label", "Because");
    Contribution first = rulings.get(0);
    markup.text(first.firing().row().because() + " ");
    sheet.rowLink(first.firing().row());
    if (!certain) {
      markup.text(sheet.known().waitsFor(first.firing()));
    }
    if (rulings.size() > 1) {
      markup.text(" and " + Words.count(rulings.size() - 1, "more row"));
    }
    markup.end().end();
  }
}
