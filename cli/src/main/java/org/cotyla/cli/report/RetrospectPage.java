package org.cotyla.cli.report;

import java.util.ArrayList;
import java.util.List;
import org.cotyla.audit.AuditReport;
import org.cotyla.identity.ProtocolDigest;
import org.cotyla.protocol.Protocol;
import org.cotyla.retrospective.Column;
import org.cotyla.retrospective.Meaning;
import org.cotyla.retrospective.RetrospectiveReport;
import org.cotyla.retrospective.RunCounts;

/** What past cases come to when a protocol judges them, as one HTML page like an audit's. */
public final class RetrospectPage {

  private RetrospectPage() {}

  /** The page. */
  public static String write(RetrospectiveReport report) {
    String caution = report.protocol().about().caution() + " " + AuditReport.NO_VERDICT;
    AuditSheet sheet =
        new AuditSheet(
            "Past cases, held against " + report.protocol().about().title(),
            caution,
            lines(report),
            AuditReport.SMALL_NUMBERS);
    report.comparison().ifPresent(other -> new ComparisonSection(sheet, report, other).write());
    AuditPage.figures(sheet, report.audit());
    columns(sheet, report);
    return sheet.end(caution);
  }

  private static List<String> lines(RetrospectiveReport report) {
    RunCounts counts = report.counts();
    List<String> lines = new ArrayList<>();
    lines.add(
        counts.read()
            + " rows read = "
            + counts.judged()
            + " judged + "
            + counts.setAside()
            + " set aside. "
            + RetrospectiveReport.WHAT_IT_SAYS);
    lines.add("This protocol: " + named(report.protocol()));
    report.comparison().ifPresent(other -> lines.add("The other: " + named(other.protocol())));
    report
        .comparison()
        .filter(report::isSameAs)
        .ifPresent(same -> lines.add(RetrospectiveReport.THE_SAME));
    return lines;
  }

  private static String named(Protocol protocol) {
    return RetrospectiveReport.title(protocol) + ", " + ProtocolDigest.of(protocol) + ".";
  }

  private static void columns(AuditSheet sheet, RetrospectiveReport report) {
    sheet.heading("What the columns were taken for");
    HtmlTable table = sheet.table("Columns of the file", "heading", "taken for", "how");
    for (Column column : report.mapping().columns()) {
      boolean ignored = column.meaning() instanceof Meaning.Ignored;
      table.row(
          column.heading(),
          ignored
              ? "ignored"
              : column.meaning().word() + column.unit().map(unit -> ", in " + unit).orElse(""),
          column.meaning() instanceof Meaning.Ignored why ? why.why() : column.found().words());
    }
    table.end();
  }
}
