package org.cotyla.workbook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.draft.DecisionDraft;
import org.cotyla.draft.Headings;
import org.cotyla.draft.RowDraft;
import org.cotyla.draft.Text;
import org.cotyla.issue.Issues;
import org.cotyla.workbook.ProtocolSheet.KeyedRows;

/** Reads a decision sheet: its head, its two rows of headings, and a row for each rule. */
final class DecisionSheet {

  private final Sheet sheet;
  private final Issues issues;
  private final CellReading reading;

  DecisionSheet(Sheet sheet, Issues issues) {
    this.sheet = sheet;
    this.issues = issues;
    this.reading = new CellReading(issues);
  }

  /** The decision; nothing when its head or headings are wrong, which is reported. */
  Optional<DecisionDraft> read() {
    Optional<GridRow> idRow =
        sheet.rows().stream().filter(row -> CellReading.says(row.first(), "id")).findFirst();
    if (idRow.isEmpty()) {
      reportNoIdRow();
      return Optional.empty();
    }
    int heading = sheet.rows().indexOf(idRow.get());
    Map<String, Text> head =
        new KeyedRows(Headings.DECISION_HEAD, reading, issues)
            .read(sheet.rows().subList(0, heading));
    List<GridRow> below = sheet.rows().subList(heading + 1, sheet.rows().size());
    return TableColumns.read(TableColumns.Layout.DECISION, idRow.get(), below, reading, issues)
        .map(columns -> draft(head, columns, below.subList(1, below.size())));
  }

  private void reportNoIdRow() {
    Cell place =
        sheet.rows().stream()
            .filter(DecisionSheets::headsTable)
            .findFirst()
            .orElse(sheet.rows().get(0))
            .first();
    issues.error(
        "W042",
        place.at(),
        "no row of the decision sheet starts with `id`",
        "above the rules stands a row: id, when, ..., then, ..., because, source");
  }

  private DecisionDraft draft(
      Map<String, Text> head, TableColumns columns, List<GridRow> ruleRows) {
    Text noName = new Text("", sheet.rows().get(0).first().at());
    Text name = head.getOrDefault("decision", noName);
    Text none = new Text("", name.at());
    return new DecisionDraft(
        name,
        head.getOrDefault("hit policy", none),
        head.getOrDefault("asks", none),
        head.getOrDefault("ranks", none),
        head.getOrDefault("shown as", none),
        columns.names("when"),
        columns.names("then"),
        rows(columns, ruleRows));
  }

  private List<RowDraft> rows(TableColumns columns, List<GridRow> ruleRows) {
    MergedCells.check(sheet, ruleRows, columns.all(), issues);
    return new TableRows(TableColumns.Layout.DECISION, columns, reading, issues)
        .read(ruleRows).stream()
            .map(
                row ->
                    new RowDraft(
                        row.key(),
                        row.under("when"),
                        row.under("then"),
                        row.get("because"),
                        row.get("source")))
            .toList();
  }
}
