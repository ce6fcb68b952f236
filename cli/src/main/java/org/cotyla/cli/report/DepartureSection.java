package org.cotyla.cli.report;

import static org.cotyla.cli.report.AuditSheet.capital;

import java.util.List;
import org.cotyla.audit.AgainstRuleOut;
import org.cotyla.audit.AuditReport;
import org.cotyla.audit.AuditTables;
import org.cotyla.audit.NamedCases;
import org.cotyla.audit.NamedCount;
import org.cotyla.audit.RankingAudit;
import org.cotyla.audit.RowDepartures;
import org.cotyla.cli.text.Figures;

/** Where decisions depart from what was advised: which to look at, from which rows, and why. */
final class DepartureSection {

  private static final int MOST_LISTED = 60;

  private final AuditSheet sheet;
  private final AuditReport report;

  DepartureSection(AuditSheet sheet, AuditReport report) {
    this.sheet = sheet;
    this.report = report;
  }

  void named() {
    sheet.heading("To look at one by one");
    if (report.named().isEmpty()) {
      sheet.none("Nothing.");
      return;
    }
    HtmlTable table = sheet.table("Decisions and cases", "what", "how many", "references");
    for (NamedCases named : report.named()) {
      table.row(named.what(), Long.toString(named.count()), AuditTables.references(named));
    }
    table.end();
  }

  void againstRuleOuts() {
    sheet.heading("Decisions against a rule-out");
    List<AgainstRuleOut> all = report.againstRuleOuts();
    if (all.isEmpty()) {
      sheet.none("None.");
      return;
    }
    HtmlTable table =
        sheet.table(
            "What was chosen though a row ruled it out",
            "case",
            "when, by whom",
            "chosen",
            "stood first",
            "ruled out by",
            "reason given");
    all.stream().limit(MOST_LISTED).forEach(one -> row(table, one));
    table.end();
    if (all.size() > MOST_LISTED) {
      sheet.note(
          "The first "
              + MOST_LISTED
              + "; the workbook, the CSV and the JSON list the first "
              + AgainstRuleOut.MOST
              + ".");
    }
  }

  private static void row(HtmlTable table, AgainstRuleOut one) {
    String why = one.reason().isEmpty() ? "none" : one.reason();
    table.row(
        one.reference() + " (" + one.place() + ")",
        (one.day().isEmpty() ? "day not known" : one.day()) + ", " + one.role(),
        one.ranking() + ": " + one.chosen(),
        one.first(),
        String.join(", ", one.ruledOutBy()),
        one.because().isEmpty() ? why : why + ": " + one.because());
  }

  void rows() {
    sheet.heading("Rows departed from, and why");
    for (RankingAudit part : report.rankings()) {
      if (!part.rows().isEmpty()) {
        HtmlTable table =
            sheet.table(
                capital(part.ranking()), "row", "departed, of where it spoke", "reasons given");
        for (RowDepartures row : part.rows()) {
          table.row(row.row(), Figures.of(row.departed()), AuditTables.reasons(row));
        }
        table.end();
      }
    }
    if (report.whole().reasons().isEmpty()) {
      sheet.none("No departure is recorded.");
      return;
    }
    HtmlTable table = sheet.table("Reasons of all departures", "reason", "how many");
    for (NamedCount reason : report.whole().reasons()) {
      table.row(reason.name(), Long.toString(reason.count()));
    }
    table.end();
  }

  void missing() {
    sheet.heading("Data missing when it was decided");
    if (report.missing().isEmpty()) {
      sheet.none("None is recorded.");
      return;
    }
    HtmlTable table =
        sheet.table(
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
}
