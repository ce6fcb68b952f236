package org.cotyla.cli.text;

import java.util.List;
import java.util.Optional;
import org.cotyla.compare.Edit;
import org.cotyla.compare.Edit.Kind;
import org.cotyla.compare.ProtocolComparison;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issue;

/** What was edited, each at its cell; reasons and sources on their own. */
final class EditPart {

  private static final int MOST = 40;

  private final Page page;

  EditPart(Page page) {
    this.page = page;
  }

  void write(ProtocolComparison comparison) {
    List<Edit> meant =
        comparison.edits().stream().filter(edit -> edit.kind() != Kind.REASON_ONLY).toList();
    list("What was edited", meant);
    List<Edit> reasons =
        comparison.edits().stream().filter(edit -> edit.kind() == Kind.REASON_ONLY).toList();
    list("Reason or description only", reasons);
    rowIds(comparison.rowIds());
  }

  private void rowIds(List<Issue> issues) {
    if (issues.isEmpty()) {
      return;
    }
    page.heading("Ids of rows");
    for (Issue issue : issues.subList(0, Math.min(issues.size(), MOST))) {
      String help = issue.help().map(advice -> "; " + advice).orElse("");
      page.marked(2, Mark.WARNING, issue.message() + " (" + issue.place().plain() + ")" + help);
    }
    if (issues.size() > MOST) {
      page.paragraph(2, "and " + (issues.size() - MOST) + " more (see --format json)");
    }
  }

  private void list(String heading, List<Edit> edits) {
    if (edits.isEmpty()) {
      return;
    }
    page.heading(heading);
    edits.stream().limit(MOST).forEach(edit -> page.marked(2, mark(edit), line(edit)));
    if (edits.size() > MOST) {
      page.paragraph(2, "and " + (edits.size() - MOST) + " more (see --format json)");
    }
  }

  private static Mark mark(Edit edit) {
    return switch (edit.kind()) {
      case FIELD_ADDED,
          OPTION_ADDED,
          CALCULATION_ADDED,
          DECISION_ADDED,
          ROW_ADDED,
          SAFEGUARD_ADDED ->
          Mark.FOR;
      case FIELD_REMOVED,
          OPTION_REMOVED,
          CALCULATION_REMOVED,
          DECISION_REMOVED,
          ROW_REMOVED,
          SAFEGUARD_REMOVED ->
          Mark.AGAINST;
      case FIELD_INCOMPARABLE, STAGES -> Mark.WARNING;
      default -> Mark.ITEM;
    };
  }

  private static String line(Edit edit) {
    Optional<CellRef> cell = edit.after().or(edit::before);
    String at = cell.map(found -> " (" + found.plain() + ")").orElse("");
    String verb = edit.kind() == Kind.REASON_ONLY ? "" : edit.kind().word() + ": ";
    return verb + edit.words() + at;
  }
}
