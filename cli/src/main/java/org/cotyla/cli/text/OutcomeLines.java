package org.cotyla.cli.text;

import java.util.stream.Collectors;
import org.cotyla.audit.AuditReport;
import org.cotyla.audit.AuditTables;
import org.cotyla.audit.OutcomeCurve;
import org.cotyla.audit.Survival;

/** What came of decisions, as text. */
final class OutcomeLines {

  private final Page page;

  OutcomeLines(Page page) {
    this.page = page;
  }

  void write(AuditReport report) {
    page.heading("Outcomes");
    if (report.outcomes().isEmpty()) {
      page.paragraph(2, "None is recorded.");
      return;
    }
    page.paragraph(2, AuditReport.OUTCOMES);
    String before = "";
    for (OutcomeCurve curve : report.outcomes()) {
      String group = curve.outcome() + ", by " + curve.ranking();
      if (!group.equals(before)) {
        page.blank();
        page.paragraph(2, group);
        before = group;
      }
      curve(curve);
    }
  }

  private void curve(OutcomeCurve curve) {
    Survival survival = curve.survival();
    LabelledLine.write(
        page, 4, curve.option(), survival.events() + " of " + survival.subjects() + " followed");
    if (survival.steps().isEmpty()) {
      return;
    }
    Survival.Step last = survival.steps().get(survival.steps().size() - 1);
    page.paragraph(
        LabelledLine.LABEL + 6,
        "free of it after day "
            + last.days()
            + ": "
            + Figures.percent(last.free())
            + " "
            + Figures.range(last.lower(), last.upper()));
    page.paragraph(
        LabelledLine.LABEL + 6,
        "at risk at day "
            + AuditTables.TIMES.stream()
                .filter(days -> days <= survival.lastDay())
                .map(days -> days + ": " + survival.atRisk(days))
                .collect(Collectors.joining(", ")));
  }
}
