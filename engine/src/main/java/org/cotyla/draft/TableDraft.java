package org.cotyla.draft;

import java.util.List;
import java.util.Map;

/**
 * A table with two rows of headings, as text: columns that share a heading and differ by the name
 * beneath it, and columns with a heading only.
 *
 * @param names the names beneath each shared heading
 * @param rows the rows in order
 */
public record TableDraft(Map<String, List<Text>> names, List<Row> rows) {

  /**
   * A row of the table.
   *
   * @param key the cell that identifies the row
   * @param named the cells under each shared heading, as many as it has names
   * @param plain the cells under each other heading
   */
  public record Row(Text key, Map<String, List<Text>> named, Map<String, Text> plain) {

    public Row {
      named = Map.copyOf(named);
      plain = Map.copyOf(plain);
    }

    public List<Text> under(String heading) {
      return named.getOrDefault(heading, List.of());
    }

    /** The cell under the heading; blank when the sheet has no such column. */
    public Text get(String heading) {
      return plain.getOrDefault(heading, new Text("", key.at()));
    }
  }

  public TableDraft {
    names = Map.copyOf(names);
    rows = List.copyOf(rows);
  }

  public List<Text> namesUnder(String heading) {
    return names.getOrDefault(heading, List.of());
  }

  public static TableDraft empty() {
    return new TableDraft(Map.of(), List.of());
  }
}
