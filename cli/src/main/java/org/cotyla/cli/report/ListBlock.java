package org.cotyla.cli.report;

import java.util.List;
import org.cotyla.cli.text.Words;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.Standing;
import org.cotyla.protocol.Row;

/** The entries of a decision whose rows are a list; what only may apply stands last. */
final class ListBlock {

  private static final int MOST_OPEN = 4;
  private static final int MOST_OPEN_ON_FIRST_PAGE = 2;

  private final Sheet sheet;
  private final Markup markup;
  private final boolean withSources;

  ListBlock(Sheet sheet, boolean withSources) {
    this.sheet = sheet;
    this.markup = sheet.markup();
    this.withSources = withSources;
  }

  static boolean hasEntries(DecisionResult result) {
    return !result.counting().isEmpty()
        || (result.byDefault() && result.table().otherwise().isPresent());
  }

  void write(String label, DecisionResult result, String heading) {
    markup.start("div", "class", "list");
    if (!label.isEmpty()) {
      markup.leaf(heading, label);
    }
    markup.start("ul");
    if (result.byDefault()) {
      String entry = Words.results(result.table(), result.defaultResults());
      result.table().otherwise().ifPresent(row -> entry(entry + ": " + row.because(), row));
    }
    with(result, Standing.DECIDES).forEach(firing -> entry(Words.results(firing), firing.row()));
    List<Firing> open = with(result, Standing.MAY_DECIDE);
    int most = withSources ? MOST_OPEN : MOST_OPEN_ON_FIRST_PAGE;
    open.stream().limit(most).forEach(this::open);
    if (open.size() > most) {
      markup.start("li", "class", "may").text("and ");
      markup.text((open.size() - most) + " more that may apply, see the trace").end();
    }
    markup.end().end();
  }

  private static List<Firing> with(DecisionResult result, Standing standing) {
    return result.firings().stream().filter(firing -> firing.standing() == standing).toList();
  }

  private void entry(String text, Row row) {
    markup.start("li").text(text + " ");
    sheet.rowLink(row);
    sources(row);
    markup.end();
  }

  private void open(Firing firing) {
    markup.start("li", "class", "may");
    markup.leaf("span", "perhaps", "class", "open").text(" " + Words.results(firing) + " ");
    sheet.rowLink(firing.row());
    markup.text(sheet.known().waitsFor(firing));
    sources(firing.row());
    markup.end();
  }

  private void sources(Row row) {
    if (withSources && !row.sources().isEmpty()) {
      markup.text(" ").start("span", "class", "sources");
      markup.text(SourceSection.inShort(sheet.advice().protocol(), row)).end();
    }
  }
}
