package org.cotyla.cli.report;

/** The head of every page: it may load and run nothing, whatever a workbook or a case says. */
final class PageHead {

  private PageHead() {}

  /**
   * Writes it.
   *
   * @param foot the sentence at the foot of every printed page
   */
  static void write(Markup markup, String title, String foot) {
    markup.start("head");
    markup.start("meta", "charset", "utf-8").end();
    markup
        .start("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
        .end();
    markup
        .start(
            "meta",
            "http-equiv",
            "Content-Security-Policy",
            "content",
            "default-src 'none'; style-src 'unsafe-inline'")
        .end();
    markup.leaf("title", title);
    markup.style(Stylesheet.with(foot));
    markup.end();
  }
}
