package org.cotyla.cli.report;

import static org.cotyla.cli.report.AuditSheet.capital;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.audit.AuditReport;
import org.cotyla.audit.OutcomeCurve;

/** What came of decisions, as curves with their limits and the numbers at risk. */
final class OutcomeSection {

  private static final int MOST_CURVES = 6;

  private final AuditSheet sheet;
  private final AuditReport report;

  OutcomeSection(AuditSheet sheet, AuditReport report) {
    this.sheet = sheet;
    this.report = report;
  }

  void write() {
    sheet.markup().leaf("h2", "Outcomes", "class", "part");
    if (report.outcomes().isEmpty()) {
      sheet.none("None is recorded.");
      return;
    }
    sheet.note(AuditReport.OUTCOMES);
    sheet.markup().leaf("p", AuditReport.SMALL_NUMBERS, "class", "warning");
    Map<String, List<OutcomeCurve>> groups = new LinkedHashMap<>();
    for (OutcomeCurve curve : report.outcomes()) {
      groups
          .computeIfAbsent(
              capital(curve.outcome()) + ", by " + curve.ranking(), any -> new ArrayList<>())
          .add(curve);
    }
    groups.forEach(this::outcome);
  }

  private void outcome(String heading, List<OutcomeCurve> curves) {
    sheet.markup().leaf("h3", heading);
    HtmlTable table =
        sheet.table(
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
                Comparator.comparing((OutcomeCurve curve) -> curve.survival().subjects())
                    .reversed())
            .limit(MOST_CURVES)
            .toList();
    sheet.inPairs(
        drawn,
        curve -> {
          sheet.markup().leaf("h4", curve.option());
          SurvivalPicture.draw(sheet.markup(), sheet.nextPicture(), curve);
        });
    sheet.note(
        "Drawn are the options chosen most often that have an event, six at most; limits dashed.");
  }
}
