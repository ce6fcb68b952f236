package org.cotyla.cli.report;

import java.time.LocalDate;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.protocol.Picture;

/**
 * A recommendation as one HTML page with its pictures: the advice first, then how it came about.
 * The page loads nothing and runs nothing; it is well-formed XML too.
 */
public final class HtmlReport {

  private final Engine engine;

  /**
   * @param engine the engine that gave the recommendations; curves are worked out with it
   */
  public HtmlReport(Engine engine) {
    this.engine = engine;
  }

  /**
   * The page.
   *
   * @param today the day on which it is written
   */
  public String write(Recommendation advice, LocalDate today) {
    Markup markup = new Markup();
    Sheet sheet = new Sheet(markup, advice);
    markup.start("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en-GB");
    PageHead.write(
        markup,
        OpeningSection.title(advice) + " – " + advice.protocol().about().title(),
        advice.caution());
    markup.start("body");
    markup.leaf("a", "Skip to the advice", "class", "skip", "href", "#advice");
    OpeningSection opening = new OpeningSection(sheet);
    opening.write(today);
    markup.start("main", "id", "advice");
    firstPage(sheet);
    detail(sheet);
    markup.end();
    opening.closing(today);
    markup.end().end();
    return markup.toString();
  }

  private void firstPage(Sheet sheet) {
    PicturePart pictures = new PicturePart(sheet, new Variation(engine, sheet.advice().findings()));
    new AnswerSection(sheet).write();
    new RankingSection(sheet).write();
    // In this order what, why, what if not and with what kit fit on one sheet of paper.
    pictures.writeAll(
        sheet.advice().protocol().pictures().stream().filter(Picture::onFirstPage).toList());
    new RuledOutSection(sheet).write();
    new MissingSection(sheet).inShort();
  }

  private void detail(Sheet sheet) {
    Recommendation advice = sheet.advice();
    PicturePart pictures = new PicturePart(sheet, new Variation(engine, advice.findings()));
    sheet.markup().leaf("h2", "How the advice came about", "class", "part", "id", "detail");
    new PathSection(sheet).write();
    new ReasonSection(sheet).write();
    pictures.writeAll(
        advice.protocol().pictures().stream().filter(one -> !one.onFirstPage()).toList());
    new OtherLists(sheet).write();
    new MissingSection(sheet).whole();
    new TraceSection(sheet).write();
    new SourceSection(sheet).write();
    new IdentitySection(sheet).write();
  }
}
