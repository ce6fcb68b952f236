package org.cotyla.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cotyla.authoring.AnnotatedWorkbook.Note;
import org.cotyla.check.CheckReport;
import org.cotyla.check.Remark;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Severity;

/** Remarks as notes for a workbook's cells. */
final class CheckNotes {

  private CheckNotes() {}

  static List<Note> of(CheckReport report) {
    return report.remarks().stream().map(CheckNotes::note).toList();
  }

  static List<Note> of(List<Issue> issues) {
    return issues.stream().map(issue -> note(issue, "", "")).toList();
  }

  static String conclusion(CheckReport report) {
    return report.count(Severity.ERROR)
        + " errors, "
        + report.count(Severity.WARNING)
        + " warnings, "
        + report.accepted().size()
        + " accepted, "
        + report.count(Severity.NOTE)
        + " notes. Decision support only: "
        + report.protocol().about().caution();
  }

  private static Note note(Remark remark) {
    String accepted =
        remark
            .accepted()
            .map(acceptance -> "accepted: " + acceptance.because() + " (" + acceptance.by() + ")")
            .orElse("");
    return note(remark.issue(), accepted, remark.example().map(CheckNotes::findings).orElse(""));
  }

  private static Note note(Issue issue, String accepted, String example) {
    Optional<CellRef> cell =
        Optional.of(issue.place()).filter(CellRef.class::isInstance).map(CellRef.class::cast);
    return new Note(
        issue.severity().word() + (accepted.isEmpty() ? "" : ", accepted"),
        issue.code(),
        issue.place().plain(),
        cell,
        issue.message(),
        accepted.isEmpty() ? issue.help().orElse("") : accepted,
        example);
  }

  private static String findings(Recommendation answer) {
    return answer.findings().data().stream()
        .filter(datum -> datum.knowledge() == Knowledge.RECORDED)
        .map(datum -> datum.field().name() + " = " + datum.value().plain())
        .collect(Collectors.joining("; ", "at " + answer.findings().stage() + ": ", ""));
  }
}
