package org.cotyla.workbook;

import java.util.ArrayList;
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
    return DecisionColumns.read(idRow.get(), below, reading, issues)
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
      Map<String, Text> head, DecisionColumns columns, List<GridRow> ruleRows) {
    Text noName = new Text("", sheet.rows().get(0).first().at());
    Text name = head.getOrDefault("decision", noName);
    Text none = new Text("", name.at());
    return new DecisionDraft(
        name,
        head.getOrDefault("hit policy", none),
        head.getOrDefault("asks", none),
        head.getOrDefault("ranks", none),
        head.getOrDefault("shown as", none),
        columns.when().stream().map(DecisionColumns.Column::name).toList(),
        columns.then().stream().map(DecisionColumns.Column::name).toList(),
        rows(columns, ruleRows));
  }

  private List<RowDraft> rows(DecisionColumns columns, List<GridRow> ruleRows) {
    List<RowDraft> rows = new ArrayList<>();
    for (GridRow row : ruleRows) {
      Cell id = row.cell(columns.id());
      boolean hasContent =
          columns.besidesId().stream().anyMatch(column -> !row.cell(column).isBlank());
      if (!hasContent) {
        if (!id.isBlank()) {
          issues.error(
              "W049",
              id.at(),
              "the row has the id `" + TidyText.shortened(id.text()) + "` and nothing else",
              "fill it in, or move a remark to a column for people, headed `note`");
        }
        continue;
      }
      if (id.isBlank()) {
        issues.error(
            "W048", id.at(), "the row has content but no id", "give it an id that was never used");
      }
      rows.add(
          new RowDraft(
              reading.text(id),
              texts(row, columns.when()),
              texts(row, columns.then()),
              reading.text(row.cell(columns.because())),
              reading.text(row.cell(columns.source()))));
    }
    return rows;
  }

  private List<Text> texts(GridRow row, List<DecisionColumns.Column> columns) {
    return columns.stream()
        .map(column -> reading.textNotMadeDate(row.cell(column.index())))
        .toList();
  }
}
