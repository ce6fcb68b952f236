package org.cotyla.cli.report;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.cotyla.cli.text.Words;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.Standing;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.Row;
import org.cotyla.value.Truth;
import org.cotyla.value.Value;

/** Every row that decides or may decide, decision by decision in order of need. */
final class TraceSection {

  private final Sheet sheet;
  private final Markup markup;
  private final Set<String> anchored = new HashSet<>();

  TraceSection(Sheet sheet) {
    this.sheet = sheet;
    this.markup = sheet.markup();
  }

  void write() {
    markup.start("section", "aria-labelledby", "trace");
    markup.leaf("h3", "Trace: the rows that count, in order of need", "id", "trace");
    markup.leaf(
        "p",
        "● the test holds, ○ it may hold. Rows that were set aside count for"
            + " nothing; an open answer is whole in its JSON.",
        "class",
        "note");
    markup.start("table", "class", "trace");
    markup.start("thead").start("tr");
    List.of("Row and cell", "What it saw", "Gives", "Because and source")
        .forEach(text -> markup.leaf("th", text, "scope", "col"));
    markup.end().end();
    sheet.advice().decisions().stream().filter(TraceSection::isShown).forEach(this::decision);
    markup.end();
    List<String> silent =
        sheet.advice().decisions().stream()
            .filter(result -> !isShown(result))
            .map(result -> result.table().name())
            .toList();
    if (!silent.isEmpty()) {
      markup.leaf("p", "No row matches in: " + String.join(", ", silent) + ".", "class", "note");
    }
    markup.end();
  }

  private static boolean isShown(DecisionResult result) {
    return !result.firings().isEmpty()
        || (result.mayBeByDefault() && result.table().otherwise().isPresent());
  }

  private void decision(DecisionResult result) {
    markup.start("tbody").start("tr", "class", "group");
    String policy = " (hit policy " + result.table().hitPolicy().letters() + ")";
    String comesTo =
        result.outputs().isEmpty() || result.table().votes()
            ? ""
            : ": " + Reasons.outputs(sheet, result);
    markup
        .leaf("th", result.table().name() + comesTo + policy, "colspan", "4", "scope", "rowgroup")
        .end();
    List<Firing> whole = Sheet.inTrace(result);
    whole.forEach(this::row);
    ids(
        "May decide too, depending on open findings: ",
        result.counting().stream().filter(firing -> !whole.contains(firing)).toList());
    if (result.mayBeByDefault()) {
      byDefault(result);
    }
    ids(
        "Set aside: ",
        result.firings().stream()
            .filter(firing -> firing.standing() == Standing.SET_ASIDE)
            .toList());
    markup.end();
  }

  private void ids(String lead, List<Firing> rows) {
    if (!rows.isEmpty()) {
      String ids = rows.stream().map(row -> row.row().id()).collect(Collectors.joining(", "));
      markup.start("tr");
      markup.leaf("td", lead + ids, "colspan", "4", "class", "aside").end();
    }
  }

  private void row(Firing firing) {
    Row row = firing.row();
    markup.start("tr");
    markup.start("th", "scope", "row", "data-label", "Row and cell");
    sheet.anchor(row).filter(anchored::add).ifPresent(id -> markup.attribute("id", id));
    markup.text(row.id() + " ").leaf("span", row.at().plain(), "class", "cell");
    if (firing.standing() == Standing.MAY_DECIDE) {
      markup.text(" ").leaf("span", "perhaps", "class", "open");
    }
    markup.end();
    markup.start("td", "data-label", "What it saw");
    tests(firing);
    markup.end();
    markup.leaf("td", gives(firing), "data-label", "Gives");
    because(row);
    markup.end();
  }

  private void tests(Firing firing) {
    boolean any = false;
    for (int i = 0; i < firing.row().tests().size(); i++) {
      Row.Test test = firing.row().tests().get(i);
      if (!test.prepared().isAnything()) {
        any = true;
        Symbol input = firing.table().inputs().get(i).symbol();
        markup.start("div", "class", "test");
        markup.text(firing.truths().get(i) == Truth.TRUE ? "● " : "○ ");
        markup.text(input.name() + " = ");
        markup.leaf("strong", sheet.known().inWords(input, firing.seen().get(i)));
        markup.text(" meets " + test.text() + sheet.known().endpoints(test));
        markup.end();
      }
    }
    if (!any) {
      markup.text("nothing is asked");
    }
  }

  private static String gives(Firing firing) {
    return firing
        .row()
        .vote()
        .map(
            vote ->
                vote.effect().word()
                    + " "
                    + vote.option()
                    + (vote.points().signum() > 0 ? " by " + Value.of(vote.points()).plain() : ""))
        .orElseGet(() -> Words.results(firing));
  }

  private void because(Row row) {
    markup.start("td", "data-label", "Because and source").text(row.because() + " ");
    markup.start("span", "class", "sources");
    markup.text(SourceSection.inShort(sheet.advice().protocol(), row)).end();
    markup.end();
  }

  private void byDefault(DecisionResult result) {
    String lead = result.byDefault() ? "No row matches" : "It may be that no row matches";
    String because =
        result.table().otherwise().map(row -> ": " + row.because()).orElse("; it gives nothing");
    markup.start("tr");
    markup.leaf("td", lead + because, "colspan", "4").end();
  }
}
