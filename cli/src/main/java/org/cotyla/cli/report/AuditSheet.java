package org.cotyla.cli.report;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/**
 * A page of figures with its head, its cautions and its foot; it loads nothing and runs nothing.
 * Used once, by one thread.
 */
final class AuditSheet {

  private final Markup markup = new Markup();
  private int pictures;

  /**
   * Starts a page.
   *
   * @param title its title and first heading
   * @param caution what stands at its head and its foot, and under each printed page
   * @param lines what is said below the title
   * @param warning what must be read before any figure
   */
  AuditSheet(String title, String caution, List<String> lines, String warning) {
    markup.start("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en-GB");
    PageHead.write(markup, title, caution);
    markup.start("body");
    markup.leaf("a", "Skip to the figures", "class", "skip", "href", "#figures");
    markup.start("header");
    markup.leaf("p", caution, "class", "caution");
    markup.leaf("h1", title);
    lines.forEach(line -> markup.leaf("p", line, "class", "meta"));
    markup.leaf("p", warning, "class", "warning");
    markup.end();
    markup.start("main", "id", "figures");
  }

  Markup markup() {
    return markup;
  }

  /** Ends the page, and gives it. */
  String end(String caution) {
    markup.end();
    markup.start("footer").leaf("p", caution, "class", "caution").end();
    markup.end().end();
    return markup.toString();
  }

  void heading(String words) {
    markup.leaf("h2", words);
  }

  void note(String words) {
    markup.leaf("p", words, "class", "note");
  }

  /** Says that there is nothing, where figures might be looked for. */
  void none(String words) {
    markup.leaf("p", words, "class", "none");
  }

  HtmlTable table(String caption, String... headings) {
    return new HtmlTable(markup, caption, headings);
  }

  String nextPicture() {
    return "picture-" + ++pictures;
  }

  /** Two figures beside each other; the place beside an odd last one stays empty. */
  <T> void inPairs(List<T> all, Consumer<T> figure) {
    for (int i = 0; i < all.size(); i += 2) {
      markup.start("div", "class", "pair");
      for (int j = i; j < i + 2; j++) {
        markup.start("figure");
        if (j < all.size()) {
          figure.accept(all.get(j));
        } else {
          markup.text(" ");
        }
        markup.end();
      }
      markup.end();
    }
  }

  static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
