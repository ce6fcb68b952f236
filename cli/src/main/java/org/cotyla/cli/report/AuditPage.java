package org.cotyla.cli.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.cotyla.audit.AuditLine;
import org.cotyla.audit.AuditReport;
import org.cotyla.audit.AuditSource;
import org.cotyla.audit.AuditTables;
import org.cotyla.audit.Breakdown;
import org.cotyla.audit.Dimension;
import org.cotyla.audit.NamedCount;
import org.cotyla.audit.OutcomeCurve;
import org.cotyla.audit.RankingAudit;
import org.cotyla.audit.RowDepartures;
import org.cotyla.cli.text.Figures;

/** An audit as one HTML page with its charts; it loads nothing and runs nothing. */
public final class AuditPage {

  private static final int MOST_CURVES = 6;

  private final Markup markup = new Markup();
  private final AuditReport report;
  private int pictures;

  private AuditPage(AuditReport report) {
    this.report = report;
  }

  /** The page. */
  public static String write(AuditReport report) {
    AuditPage page = new AuditPage(report);
    page.markup.start("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en-GB");
    page.head();
    page.body();
    page.markup.end();
    return page.markup.toString();
  }

  private String title() {
    AuditSource source = report.source();
    return "Audit: "
        + source.title()
        + ", "
        + source.from().map(day -> "from " + day).orElse("from the start")
        + source.to().map(day -> " to " + day).orElse("");
  }

  private void head() {
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
    markup.leaf("title", title());
    markup.style(Stylesheet.with(AuditReport.CAUTION));
    markup.end();
  }

  private void body() {
    markup.start("body");
    markup.leaf("a", "Skip to the figures", "class", "skip", "href", "#figures");
    markup.start("header");
    markup.leaf("p", AuditReport.CAUTION, "class", "caution");
    markup.leaf("h1", title());
    markup.leaf("p", report.decisions() + " decisions. " + identity(), "class", "meta");
    markup.leaf("p", AuditReport.SMALL_NUMBERS, "class", "warning");
    markup.end();
    markup.start("main", "id", "figures");
    concordance();
    months();
    named();
    breakdowns();
    rows();
    missing();
    outcomes();
    markup.end();
    markup.start("footer").leaf("p", AuditReport.CAUTION, "class", "caution").end();
    markup.end();
  }

  private String identity() {
    StringBuilder words = new StringBuilder();
    for (AuditSource.Fact fact : report.source().identity()) {
      words
          .append(words.isEmpty() ? "" : "; ")
          .append(fact.name())
          .append(' ')
          .append(fact.value());
    }
    return words.append('.').toString();
  }

  private void concordance() {
    markup.leaf("h2", "Agreement with what was advised");
    markup.leaf(
        "p",
        "Of the decisions that could be judged, with 95 % intervals by Wilson. A whole decision"
            + " counts by the worst of its parts.",
        "class",
        "note");
    HtmlTable table =
        new HtmlTable(
            markup,
            "Agreement by ranking",
            "decision",
            "what stood first",
            "first or acceptable",
            "against a rule-out",
            "not ranked",
            "nothing advised");
    for (RankingAudit part : report.parts()) {
      AuditLine all = part.all();
      table.row(
          AuditTables.rankingName(part.ranking()),
          Figures.of(all.first()),
          Figures.of(all.acceptable()),
          Figures.of(all.ruledOut()),
          Long.toString(all.tally().notRanked()),
          Long.toString(all.tally().unjudged()));
    }
    table.end();
  }

  private void months() {
    markup.leaf("h2", "By month");
    markup.leaf(
        "p",
        "The share that chose what stood first, with limits of three standard deviations around the"
            + " share over all months. A month beyond its limits is worth a question; one within them"
            + " is not; of many months, one in some hundreds lies beyond by chance. Hollow points: so few decisions that the limits are rough.",
        "class",
        "note");
    inPairs(
        report.parts(),
        part -> {
          markup.leaf("h3", capital(AuditTables.rankingName(part.ranking())));
          ControlPicture.draw(markup, nextPicture(), part);
        });
  }

  private void named() {
    markup.leaf("h2", "To look at one by one");
    if (report.named().isEmpty()) {
      markup.leaf("p", "Nothing.", "class", "none");
      return;
    }
    HtmlTable table =
        new HtmlTable(markup, "Decisions and cases", "what", "how many", "references");
    report
        .named()
        .forEach(
            named ->
                table.row(
                    named.what(), Long.toString(named.count()), AuditTables.references(named)));
    table.end();
  }

  private void breakdowns() {
    markup.leaf("h2", "By role, option, group and protocol");
    for (Breakdown breakdown : report.whole().breakdowns()) {
      if (breakdown.by() != Dimension.MONTH) {
        breakdown("By " + AuditTables.name(breakdown) + ", whole decisions", breakdown);
      }
    }
    for (RankingAudit part : report.rankings()) {
      for (Breakdown breakdown : part.breakdowns()) {
        if (breakdown.by() == Dimension.OPTION) {
          breakdown("By " + part.ranking() + " chosen", breakdown);
        }
      }
    }
  }

  private void breakdown(String caption, Breakdown breakdown) {
    HtmlTable table =
        new HtmlTable(
            markup,
            caption,
            AuditTables.name(breakdown),
            "decisions",
            "what stood first",
            "first or acceptable",
            "against a rule-out");
    for (AuditLine line : breakdown.lines()) {
      table.row(
          line.value(),
          Long.toString(line.tally().all()),
          Figures.of(line.first()),
          Figures.of(line.acceptable()),
          Figures.of(line.ruledOut()));
    }
    table.end();
  }

  private void rows() {
    markup.leaf("h2", "Rows departed from, and why");
    for (RankingAudit part : report.rankings()) {
      if (!part.rows().isEmpty()) {
        HtmlTable table =
            new HtmlTable(
                markup,
                capital(part.ranking()),
                "row",
                "departed, of where it spoke",
                "reasons given");
        for (RowDepartures row : part.rows()) {
          table.row(row.row(), Figures.of(row.departed()), AuditTables.reasons(row));
        }
        table.end();
      }
    }
    if (report.whole().reasons().isEmpty()) {
      markup.leaf("p", "No departure is recorded.", "class", "none");
      return;
    }
    HtmlTable table = new HtmlTable(markup, "Reasons of all departures", "reason", "how many");
    for (NamedCount reason : report.whole().reasons()) {
      table.row(reason.name(), Long.toString(reason.count()));
    }
    table.end();
  }

  private void missing() {
    markup.leaf("h2", "Data missing when it was decided");
    if (report.missing().isEmpty()) {
      markup.leaf("p", "None is recorded.", "class", "none");
      return;
    }
    HtmlTable table =
        new HtmlTable(
            markup,
            "Data that were missing or known in part",
            "datum",
            "decisions",
            "of which it might have changed a first place");
    report
        .missing()
        .forEach(
            datum ->
                table.row(
                    datum.field(),
                    Long.toString(datum.decisions()),
                    Long.toString(datum.mightChangeFirst())));
    table.end();
  }

  private void outcomes() {
    markup.leaf("h2", "Outcomes", "class", "part");
    if (report.outcomes().isEmpty()) {
      markup.leaf("p", "None is recorded.", "class", "none");
      return;
    }
    markup.leaf("p", AuditReport.OUTCOMES, "class", "note");
    markup.leaf("p", AuditReport.SMALL_NUMBERS, "class", "warning");
    Map<String, List<OutcomeCurve>> groups = new LinkedHashMap<>();
    for (OutcomeCurve curve : report.outcomes()) {
      groups
          .computeIfAbsent(
              capital(curve.outcome()) + ", by " + curve.ranking(),
              any -> new java.util.ArrayList<>())
          .add(curve);
    }
    groups.forEach(this::outcome);
  }

  private void outcome(String heading, List<OutcomeCurve> curves) {
    markup.leaf("h3", heading);
    HtmlTable table =
        new HtmlTable(
            markup,
            "All options",
            "option",
            "events, of those followed",
            "free of it after the last event",
            "at risk then");
    curves.forEach(curve -> SurvivalPicture.row(table, curve));
    table.end();
    List<OutcomeCurve> drawn =
        curves.stream()
            .filter(curve -> curve.survival().events() > 0)
            .sorted(
                java.util.Comparator.comparing((OutcomeCurve curve) -> curve.survival().subjects())
                    .reversed())
            .limit(MOST_CURVES)
            .toList();
    inPairs(
        drawn,
        curve -> {
          markup.leaf("h4", curve.option());
          SurvivalPicture.draw(markup, nextPicture(), curve);
        });
    markup.leaf(
        "p",
        "Drawn are the options chosen most often that have an event, six at most; limits dashed.",
        "class",
        "note");
  }

  /** Two figures beside each other; the place beside an odd last one stays empty. */
  private <T> void inPairs(List<T> all, Consumer<T> figure) {
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

  private String nextPicture() {
    return "picture-" + ++pictures;
  }

  private static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
  }
}
