package org.cotyla.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.draft.TableDraft;
import org.cotyla.draft.Text;
import org.cotyla.issue.Issues;

/** Reads the rows of a table whose columns are known. */
record TableRows(
    TableColumns.Layout layout, TableColumns columns, CellReading reading, Issues issues) {

  List<TableDraft.Row> read(List<GridRow> gridRows) {
    List<TableDraft.Row> rows = new ArrayList<>();
    for (GridRow row : gridRows) {
      Cell key = row.cell(columns.key());
      boolean hasContent =
          columns.besidesKey().stream().anyMatch(column -> !row.cell(column).isBlank());
      if (hasContent) {
        refuseNoKey(key);
        rows.add(row(row, key));
      } else if (!key.isBlank()) {
        issues.error(
            "W049",
            key.at(),
            "the row has the "
                + layout.key()
                + " `"
                + TidyText.shortened(key.text())
                + "` and nothing else",
            "fill it in, or move a remark to a column for people, headed `note`");
      }
    }
    return rows;
  }

  private void refuseNoKey(Cell key) {
    if (key.isBlank()) {
      issues.error(
          "W048",
          key.at(),
          "the row has content but no " + layout.key(),
          layout.key().equals("id")
              ? "give it an id that was never used"
              : "say in a few words which " + layout.key() + " it is");
    }
  }

  private TableDraft.Row row(GridRow row, Cell key) {
    Map<String, List<Text>> named = new HashMap<>();
    columns.named().forEach((word, under) -> named.put(word, texts(row, under)));
    Map<String, Text> plain = new HashMap<>();
    columns.plain().forEach((word, column) -> plain.put(word, reading.text(row.cell(column))));
    return new TableDraft.Row(reading.text(key), named, plain);
  }

  private List<Text> texts(GridRow row, List<TableColumns.Column> under) {
    return under.stream().map(column -> reading.textNotMadeDate(row.cell(column.index()))).toList();
  }
}
