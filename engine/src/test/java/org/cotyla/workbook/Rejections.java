package org.cotyla.workbook;

import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.stream.Collectors;
import org.cotyla.issue.Issue;
import org.cotyla.issue.RejectedException;
import org.cotyla.issue.Severity;

/** What reading a workbook says against it. */
final class Rejections {

  private Rejections() {}

  static List<Issue> errors(byte[] workbook) {
    RejectedException rejected =
        catchThrowableOfType(
            RejectedException.class, () -> Workbooks.read("rods.xlsx", workbook, List.of()));
    return rejected == null
        ? List.of()
        : rejected.issues().stream()
            .filter(issue -> issue.severity() == Severity.ERROR)
            .collect(Collectors.toList());
  }

  /** The errors as they are printed, each on its lines. */
  static String text(byte[] workbook) {
    return errors(workbook).stream().map(Issue::plain).collect(Collectors.joining("\n"));
  }
}
