package org.cotyla.cli.text;

import java.util.ArrayList;
import java.util.List;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explain.RowChange;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Row;

/** The rows that make a difference: those that count now, and those that did. */
final class RowChangeLines {

  private static final int MOST_OPEN = 3;

  private final Page page;
  private final Protocol protocol;

  RowChangeLines(Page page, Recommendation advice) {
    this.page = page;
    this.protocol = advice.protocol();
  }

  /** Each with its reason; of those that only may count now, a few. */
  void reasons(int indent, List<RowChange> rows) {
    List<RowChange> open = new ArrayList<>();
    for (RowChange change : rows) {
      switch (change.kind()) {
        case ADDED, OTHER_RESULT -> page.marked(indent, Mark.FOR, reason(change.row()));
        case SETTLED ->
            page.marked(indent, Mark.FOR, reason(change.row()) + " (was open, is certain now)");
        case REMOVED -> page.marked(indent, Mark.AGAINST, "no longer: " + reason(change.row()));
        case OPENED -> open.add(change);
        case EXCLUDED -> {}
      }
    }
    open.stream()
        .limit(MOST_OPEN)
        .forEach(change -> page.marked(indent, Mark.OPEN, "may be: " + reason(change.row())));
    if (open.size() > MOST_OPEN) {
      page.marked(
          indent,
          Mark.OPEN,
          "and " + Words.count(open.size() - MOST_OPEN, "more row") + " that may count");
    }
  }

  String reason(Row row) {
    return row.because() + " " + Words.reference(row, protocol);
  }
}
