package org.cotyla.compile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.draft.Line;
import org.cotyla.draft.Text;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issues;
import org.cotyla.name.Names;
import org.cotyla.protocol.Change;

/** The sheet Changes: a protocol's history, and the row ids that it took out of use. Used once. */
final class ChangeCompiler {

  private final DecisionCompiler rows;
  private final Issues issues;
  private final Map<String, CellRef> retired = new HashMap<>();

  /**
   * @param rows has seen every row that has an id
   * @param issues takes the faults
   */
  ChangeCompiler(DecisionCompiler rows, Issues issues) {
    this.rows = rows;
    this.issues = issues;
  }

  List<Change> compile(List<Line> lines) {
    return lines.stream().map(this::change).toList();
  }

  private Change change(Line line) {
    return new Change(
        line.get("version").text(),
        line.get("date").text(),
        line.get("author role").text(),
        line.get("what changed").text(),
        line.get("why").text(),
        retired(line.get("retired ids")),
        line.at());
  }

  private List<String> retired(Text cell) {
    List<String> ids = new ArrayList<>();
    if (cell.isNone()) {
      return ids;
    }
    for (String part : cell.text().split(",", -1)) {
      String id = part.strip();
      if (isId(id, cell)) {
        retire(id, cell);
        ids.add(id);
      }
    }
    return ids;
  }

  private boolean isId(String id, Text cell) {
    if (Names.key(id).isEmpty()) {
      issues.error(
          "W252",
          cell.at(),
          "`" + cell.text() + "` has a comma too many, or an id without a letter or digit",
          "write the ids with a comma between them: DC-07, DC-12");
      return false;
    }
    if (DecisionCompiler.isDefault(id)) {
      issues.error(
          "W252",
          cell.at(),
          "`" + id + "` is no row's own id, so it cannot be retired",
          "a default row may be taken away and put back");
      return false;
    }
    return true;
  }

  private void retire(String id, Text cell) {
    CellRef earlier = retired.putIfAbsent(Names.key(id), cell.at());
    if (earlier != null) {
      issues.warning(
          "W251",
          cell.at(),
          "`" + id + "` is already retired at " + earlier.plain(),
          "name it once, at the change that took the row away");
      return;
    }
    rows.usedAt(id)
        .ifPresent(
            used ->
                issues.error(
                    "W250",
                    used,
                    "row id `" + id + "` was retired at " + cell.at().plain(),
                    "give the row an id that was never used; records of old plans mean the row"
                        + " that is gone"));
  }
}
