package org.cotyla.cli.report;

import java.util.List;

/** A plain table whose cells carry their headings, for narrow screens. */
final class HtmlTable {

  private final Markup markup;
  private final List<String> headings;

  HtmlTable(Markup markup, String caption, String... headings) {
    this.markup = markup;
    this.headings = List.of(headings);
    markup.start("table").leaf("caption", caption).start("thead").start("tr");
    for (String heading : headings) {
      markup.leaf("th", heading, "scope", "col");
    }
    markup.end().end().start("tbody");
  }

  /** A row; its first cell is its heading. */
  void row(String first, String... rest) {
    markup.start("tr").leaf("th", first, "scope", "row");
    for (int i = 0; i < rest.length; i++) {
      markup.leaf("td", rest[i], "data-label", headings.get(i + 1));
    }
    markup.end();
  }

  void end() {
    markup.end().end();
  }
}
