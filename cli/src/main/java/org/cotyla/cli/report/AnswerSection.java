package org.cotyla.cli.report;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.cotyla.cli.text.FollowOn;
import org.cotyla.cli.text.Words;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.evaluate.Standing;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Picture;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.ShownAs;

/** What comes first in each ranking, and every headline decision with the row that made it. */
final class AnswerSection {

  private static final int MOST_REASONS = 2;
  private static final int MOST_FINDINGS = 5;

  private final Sheet sheet;
  private final Markup markup;
  private final Recommendation advice;

  AnswerSection(Sheet sheet) {
    this.sheet = sheet;
    this.markup = sheet.markup();
    this.advice = sheet.advice();
  }

  void write() {
    markup.start("section", "aria-labelledby", "decision");
    markup.leaf("h2", "The decision", "id", "decision");
    if (!advice.rankings().isEmpty()) {
      markup.start("div", "class", "answers");
      advice.rankings().forEach(this::answer);
      markup.end();
    }
    FollowOn follow = new FollowOn(advice.protocol());
    Map<Boolean, List<DecisionResult>> headlines =
        advice.shownAs(ShownAs.HEADLINE).stream()
            .filter(result -> !result.table().votes() && !result.table().hitPolicy().isList())
            .filter(result -> !isInPicture(result.table()))
            .collect(Collectors.partitioningBy(one -> follow.followsFromRanking(one.table())));
    table("What the findings point to", headlines.getOrDefault(false, List.of()));
    table("What follows from the first choice", headlines.getOrDefault(true, List.of()));
    markup.end();
  }

  /** What a picture of the first page says already is not said twice. */
  private boolean isInPicture(DecisionTable table) {
    return advice.protocol().pictures().stream()
        .filter(Picture::onFirstPage)
        .flatMap(picture -> picture.parts().stream())
        .flatMap(part -> PictureValues.formula(part).stream())
        .anyMatch(formula -> formula.references().containsAll(table.gives()));
  }

  private void answer(RankingResult ranking) {
    markup.start("div", "class", "answer");
    markup.leaf("p", "First " + ranking.ranking().name(), "class", "label");
    boolean named = ranking.firstIsCertain() || ranking.leaderStandsOut();
    long possible = ranking.options().stream().filter(RankedOption::canBeFirst).count();
    String first =
        named
            ? ranking.leader().map(RankedOption::name).orElse("every option is ruled out")
            : "open: " + possible + " of " + ranking.options().size() + " can still come first";
    markup.leaf("p", first, "class", "choice");
    markup.leaf("p", certainty(ranking), "class", "certainty");
    markup.end();
  }

  private String certainty(RankingResult ranking) {
    if (ranking.firstIsCertain()) {
      return "Certain: no open finding can change it.";
    }
    List<String> open = Reasons.mayChangeFirst(advice, ranking.ranking().name());
    return open.isEmpty()
        ? "Not certain."
        : "Not certain. It hangs on: " + Words.some(open, MOST_FINDINGS) + ".";
  }

  private void table(String caption, List<DecisionResult> decisions) {
    if (decisions.isEmpty()) {
      return;
    }
    markup.start("table", "class", "decisions", "aria-label", caption);
    markup.start("thead").start("tr");
    List.of(caption, "Comes to", "Because").forEach(this::heading);
    markup.end().end().start("tbody");
    decisions.forEach(this::row);
    markup.end().end();
  }

  private void heading(String text) {
    markup.leaf("th", text, "scope", "col");
  }

  private void row(DecisionResult result) {
    markup.start("tr");
    markup.leaf("th", result.table().name(), "scope", "row");
    markup.start("td", "data-label", "Comes to");
    markup.leaf("strong", Reasons.outputs(sheet, result));
    if (!result.isCertain()) {
      markup.text(" ").leaf("span", "open", "class", "open");
    }
    markup.end();
    markup.start("td", "data-label", "Because");
    reasons(result);
    markup.end().end();
  }

  private void reasons(DecisionResult result) {
    // What only may match would read as if it were so.
    List<Firing> counting =
        result.counting().stream().filter(row -> row.standing() == Standing.DECIDES).toList();
    int open = result.counting().size() - counting.size();
    if (result.table().hitPolicy().isAggregate()) {
      counting = counting.stream().filter(row -> counts(row, result)).toList();
    }
    String before = "";
    for (Firing firing : counting.subList(0, Math.min(MOST_REASONS, counting.size()))) {
      markup.text(before);
      reason(firing.row());
      before = " ";
    }
    if (counting.size() > MOST_REASONS) {
      markup.text(" And " + Words.count(counting.size() - MOST_REASONS, "more row") + ".");
    }
    if (result.byDefault()) {
      result.table().otherwise().ifPresent(this::reason);
    }
    if (!result.isCertain() && open > 0) {
      markup.text(before + Words.count(open, "row") + " may still match.");
    }
    List<String> waits = Reasons.waitsFor(advice, result.table().name());
    if (!result.isCertain() && !waits.isEmpty()) {
      markup.text(" Hangs on: " + Words.some(waits, MOST_FINDINGS) + ".");
    }
  }

  /** Of a sum the rows that add to it, of a greatest or least those that reach it. */
  private static boolean counts(Firing firing, DecisionResult result) {
    return switch (result.table().hitPolicy()) {
      case MINIMUM, MAXIMUM ->
          !result.isCertain() || result.outputs().containsValue(firing.results().get(0));
      case SUM ->
          !firing.results().get(0).single().map(one -> one.plain().equals("0")).orElse(false);
      default -> true;
    };
  }

  private void reason(Row row) {
    markup.text(row.because() + " ");
    sheet.rowLink(row);
  }
}
