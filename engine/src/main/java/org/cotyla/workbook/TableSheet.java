package org.cotyla.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.draft.TableDraft;
import org.cotyla.draft.Text;
import org.cotyla.issue.Issues;

/** Reads a sheet of the format that holds one table with two rows of headings. */
record TableSheet(TableColumns.Layout layout, Issues issues) {

  /** The table; nothing when its headings are wrong, which is reported. */
  Optional<TableDraft> read(Sheet sheet) {
    if (sheet.rows().isEmpty()) {
      return Optional.of(TableDraft.empty());
    }
    Optional<GridRow> headings =
        sheet.rows().stream()
            .filter(row -> CellReading.says(row.first(), layout.key()))
            .findFirst();
    if (headings.isEmpty()) {
      issues.error(
          "W042",
          sheet.corner(),
          "no row of the " + layout.sheet() + " starts with `" + layout.key() + "`",
          "above the table stands a row: " + String.join(", ", inOrder()));
      return Optional.empty();
    }
    CellReading reading = new CellReading(issues);
    int heading = sheet.rows().indexOf(headings.get());
    List<GridRow> below = sheet.rows().subList(heading + 1, sheet.rows().size());
    return TableColumns.read(layout, headings.get(), below, reading, issues)
        .map(columns -> table(sheet, columns, below.subList(1, below.size()), reading));
  }

  private List<String> inOrder() {
    List<String> words = new ArrayList<>();
    for (String word : layout.headings()) {
      words.add(word);
      if (layout.named().contains(word)) {
        words.add("...");
      }
    }
    return words;
  }

  private TableDraft table(
      Sheet sheet, TableColumns columns, List<GridRow> rows, CellReading reading) {
    MergedCells.check(sheet, rows, columns.all(), issues);
    Map<String, List<Text>> names = new LinkedHashMap<>();
    layout.named().forEach(word -> names.put(word, columns.names(word)));
    return new TableDraft(names, new TableRows(layout, columns, reading, issues).read(rows));
  }
}
