package org.cotyla.cli.report;

import java.util.List;
import java.util.stream.Collectors;
import org.cotyla.audit.AuditReport;
import org.cotyla.audit.AuditSource;

/** An audit as one HTML page with its charts; it loads nothing and runs nothing. */
public final class AuditPage {

  private AuditPage() {}

  /** The page. */
  public static String write(AuditReport report) {
    AuditSheet sheet =
        new AuditSheet(
            title(report.source()),
            AuditReport.CAUTION,
            List.of(report.decisions() + " decisions. " + identity(report.source())),
            AuditReport.SMALL_NUMBERS);
    figures(sheet, report);
    new OutcomeSection(sheet, report).write();
    return sheet.end(AuditReport.CAUTION);
  }

  /** The sections of any decisions, wherever they were written down. */
  static void figures(AuditSheet sheet, AuditReport report) {
    AgreementSection agreement = new AgreementSection(sheet, report);
    DepartureSection departures = new DepartureSection(sheet, report);
    agreement.overAll();
    agreement.byMonth();
    if (!report.named().isEmpty()) {
      departures.named();
    }
    departures.againstRuleOuts();
    agreement.byWhatTheyShare();
    departures.rows();
    departures.missing();
  }

  private static String title(AuditSource source) {
    return "Audit: "
        + source.title()
        + ", "
        + source.from().map(day -> "from " + day).orElse("from the start")
        + source.to().map(day -> " to " + day).orElse("");
  }

  private static String identity(AuditSource source) {
    return source.identity().stream()
        .map(fact -> fact.name() + ' ' + fact.value())
        .collect(Collectors.joining("; ", "", "."));
  }
}
