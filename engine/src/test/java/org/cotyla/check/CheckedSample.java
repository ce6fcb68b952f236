package org.cotyla.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.cotyla.compile.SampleDraft;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.issue.Severity;

/** What a check says of an edited sample protocol. */
record CheckedSample(CheckReport report) {

  static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

  static CheckedSample of(SampleDraft draft) {
    return new CheckedSample(
        ProtocolCheck.of(Engine.of(draft.protocol())).run(TODAY, Progress.untold()));
  }

  /** Every error and warning that was not there before the edit, as a line. */
  List<String> lines() {
    List<String> before = all(of(new SampleDraft()));
    return all(this).stream().filter(line -> !before.contains(line)).toList();
  }

  private static List<String> all(CheckedSample checked) {
    return checked.report.remarks().stream()
        .filter(remark -> remark.issue().severity() != Severity.NOTE)
        .filter(remark -> remark.accepted().isEmpty())
        .map(remark -> remark.issue().plain().replaceAll("\n.*", ""))
        .toList();
  }

  Remark remark(String code) {
    return report.remarks().stream()
        .filter(remark -> remark.issue().code().equals(code))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + code + " in " + report.remarks()));
  }

  List<Remark> remarks(String code) {
    return report.remarks().stream().filter(remark -> remark.issue().code().equals(code)).toList();
  }

  /** The findings of the case that shows a remark, in the order of the protocol. */
  static String findings(Recommendation example) {
    return example.findings().data().stream()
        .filter(datum -> datum.knowledge() == Knowledge.RECORDED)
        .map(CheckedSample::finding)
        .collect(Collectors.joining("; "));
  }

  private static String finding(Datum datum) {
    return datum.field().name() + " " + datum.value().plain();
  }

  CheckedSample says(String... lines) {
    assertThat(lines()).containsExactlyInAnyOrder(lines);
    return this;
  }
}
