package org.cotyla.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.draft.Headings;
import org.cotyla.draft.Text;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issues;

/**
 * Reads a sheet's keys and values: in each row the first cell is the key and the next the value.
 */
final class ProtocolSheet {

  private final KeyedRows rows;

  ProtocolSheet(Issues issues) {
    this.rows = new KeyedRows(Headings.ABOUT, new CellReading(issues), issues);
  }

  Map<String, Text> read(Sheet sheet) {
    return rows.read(sheet.rows());
  }

  /** Keys and values of some rows, spelt as the format spells the keys. */
  record KeyedRows(List<String> keys, CellReading reading, Issues issues) {

    Map<String, Text> read(List<GridRow> rows) {
      Map<String, Text> values = new LinkedHashMap<>();
      List<GridRow> others = new ArrayList<>();
      for (GridRow row : rows) {
        Cell cell = row.first();
        Optional<String> key =
            keys.stream().filter(known -> CellReading.says(cell, known)).findFirst();
        if (key.isEmpty()) {
          others.add(row);
          continue;
        }
        Text value = value(row, cell);
        Text earlier = values.putIfAbsent(key.get(), value);
        if (earlier != null) {
          issues.error(
              "W034",
              cell.at(),
              "`" + key.get() + "` stands twice; the other is at " + earlier.at().plain());
        }
      }
      others.forEach(other -> refuseSlip(other, values));
      return values;
    }

    private Text value(GridRow row, Cell key) {
      return row.after(key.at().column())
          .map(reading::text)
          .orElseGet(
              () ->
                  new Text("", new CellRef(key.at().sheet(), row.index(), key.at().column() + 1)));
    }

    /** Reads on as if the key were right, so that what else is wrong is found as well. */
    private void refuseSlip(GridRow row, Map<String, Text> values) {
      Cell cell = row.first();
      List<String> missing = keys.stream().filter(key -> !values.containsKey(key)).toList();
      NearMiss.of(cell.text(), missing)
          .ifPresent(
              meant -> {
                issues.error(
                    "W033",
                    cell.at(),
                    "`" + TidyText.shortened(cell.text()) + "` is not a key",
                    "did you mean `" + meant + "`?");
                values.put(meant, value(row, cell));
              });
    }
  }
}
