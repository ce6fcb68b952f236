package org.cotyla.cli.report;

import java.util.ArrayList;
import java.util.List;
import org.cotyla.cli.text.Words;
import org.cotyla.evaluate.Contribution;
import org.cotyla.evaluate.Firing;
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
    markup.start("section", "class", "ruled-out", "aria-labelledby", "ruled-out");
    markup.leaf("h2", "Ruled out", "id", "ruled-out");
    List<TwoColumns.Entry> entries = new ArrayList<>();
    for (RankingResult ranking : sheet.advice().rankings()) {
      ranking.ruledOut().forEach(option -> entries.add(entry(option, true)));
      mayBe(ranking).forEach(option -> entries.add(entry(option, false)));
    }
    TwoColumns.Block all = new TwoColumns.Block("h3", "", "ul", "ruled", entries);
    new TwoColumns(markup, List.of(all)).write();
    markup.end();
  }

  private static List<RankedOption> mayBe(RankingResult ranking) {
    return ranking.options().stream()
        .filter(option -> option.availability() == Availability.MAY_BE_RULED_OUT)
        .toList();
  }

  private TwoColumns.Entry entry(RankedOption option, boolean certain) {
    List<Contribution> rulings =
        option.rulings().stream().filter(row -> !certain || row.isCertain()).toList();
    Firing first = rulings.get(0).firing();
    String waits = certain ? "" : sheet.known().waitsFor(first);
    String more = rulings.size() > 1 ? " and " + Words.count(rulings.size() - 1, "more row") : "";
    int marks = certain ? 8 : 18;
    return new TwoColumns.Entry(
        marks
            + option.name().length()
            + first.row().because().length()
            + first.row().id().length()
            + waits.length()
            + more.length(),
        () -> {
          markup.start("li").leaf("strong", (certain ? "× " : "? ") + option.name()).text(": ");
          if (!certain) {
            markup.leaf("span", "perhaps", "class", "open").text(" ");
          }
          markup.text(first.row().because() + " ");
          sheet.rowLink(first.row());
          markup.text(waits + more).end();
        });
  }
}
