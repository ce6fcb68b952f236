package org.cotyla.cli.report;

import static org.cotyla.cli.report.AuditSheet.capital;

import org.cotyla.audit.AuditLine;
import org.cotyla.audit.AuditReport;
import org.cotyla.audit.AuditTables;
import org.cotyla.audit.Breakdown;
import org.cotyla.audit.Dimension;
import org.cotyla.audit.RankingAudit;
import org.cotyla.cli.text.Figures;

/** How far decisions agree with what was advised: over all, by month, and by what they share. */
final class AgreementSection {

  private final AuditSheet sheet;
  private final AuditReport report;

  AgreementSection(AuditSheet sheet, AuditReport report) {
    this.sheet = sheet;
    this.report = report;
  }

  void overAll() {
    sheet.heading("Agreement with what was advised");
    sheet.note(
        "Of the decisions that could be judged, with 95 % intervals by Wilson. A whole decision"
            + " counts by the worst of its parts.");
    HtmlTable table =
        sheet.table(
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

  void byMonth() {
    sheet.heading("By month");
    sheet.note(
        "The share that chose what stood first, with limits of three standard deviations around the"
            + " share over all months. A month beyond its limits is worth a question; one within"
            + " them is not; of many months, one in some hundreds lies beyond by chance. Hollow"
            + " points: so few decisions that the limits are rough.");
    sheet.inPairs(
        report.parts(),
        part -> {
          sheet.markup().leaf("h3", capital(AuditTables.rankingName(part.ranking())));
          ControlPicture.draw(sheet.markup(), sheet.nextPicture(), part);
        });
  }

  void byWhatTheyShare() {
    sheet.heading("By role, option, group and protocol");
    for (Breakdown breakdown : report.whole().breakdowns()) {
      if (breakdown.by() != Dimension.MONTH) {
        breakdown("By " + AuditTables.name(breakdown) + ", whole decisions", breakdown);
      }
    }
    for (RankingAudit part : report.rankings()) {
      for (Breakdown breakdown : part.breakdowns()) {
        if (breakdown.by() == Dimension.OPTION) {
          breakdown("By " + part.ranking() + " chosen", breakdown);
        } else if (breakdown.by() == Dimension.ADVISED) {
          breakdown("By " + part.ranking() + " advised first", breakdown);
        }
      }
    }
  }

  private void breakdown(String caption, Breakdown breakdown) {
    HtmlTable table =
        sheet.table(
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
}
