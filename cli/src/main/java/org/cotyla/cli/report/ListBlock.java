package org.cotyla.cli.report;

import java.util.ArrayList;
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

  TwoColumns.Block of(String label, DecisionResult result, String heading) {
    List<TwoColumns.Entry> entries = new ArrayList<>();
    if (result.byDefault()) {
      String entry = Words.results(result.table(), result.defaultResults());
      result
          .table()
          .otherwise()
          .ifPresent(row -> entries.add(entry(entry + ": " + row.because(), row)));
    }
    with(result, Standing.DECIDES)
        .forEach(firing -> entries.add(entry(Words.results(firing), firing.row())));
    List<Firing> open = with(result, Standing.MAY_DECIDE);
    int most = withSources ? MOST_OPEN : MOST_OPEN_ON_FIRST_PAGE;
    open.stream().limit(most).forEach(firing -> entries.add(open(firing)));
    if (open.size() > most) {
      String more = "and " + (open.size() - most) + " more that may apply, see the trace";
      entries.add(
          new TwoColumns.Entry(more.length(), () -> markup.leaf("li", more, "class", "may")));
    }
    return new TwoColumns.Block(heading, label, "ul", "", entries);
  }

  private static List<Firing> with(DecisionResult result, Standing standing) {
    return result.firings().stream().filter(firing -> firing.standing() == standing).toList();
  }

  private TwoColumns.Entry entry(String text, Row row) {
    String sources = sources(row);
    return new TwoColumns.Entry(
        text.length() + row.id().length() + sources.length() + 4,
        () -> {
          markup.start("li").text(text + " ");
          sheet.rowLink(row);
          write(sources);
          markup.end();
        });
  }

  private TwoColumns.Entry open(Firing firing) {
    String text = " " + Words.results(firing) + " ";
    String waits = sheet.known().waitsFor(firing);
    String sources = sources(firing.row());
    return new TwoColumns.Entry(
        text.length() + waits.length() + firing.row().id().length() + sources.length() + 14,
        () -> {
          markup.start("li", "class", "may");
          markup.leaf("span", "perhaps", "class", "open").text(text);
          sheet.rowLink(firing.row());
          markup.text(waits);
          write(sources);
          markup.end();
        });
  }

  private String sources(Row row) {
    return withSources ? SourceSection.inShort(sheet.advice().protocol(), row) : "";
  }

  private void write(String sources) {
    if (!sources.isEmpty()) {
      markup.text(" ").leaf("span", sources, "class", "sources");
    }
  }
}
