package org.cotyla.dmn;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.cotyla.draft.DecisionDraft;
import org.cotyla.draft.RowDraft;
import org.cotyla.draft.Text;
import org.cotyla.issue.CellRef;

/** One decision sheet while it is put together. */
final class ImportedTable {

  /** A row; the lists grow with the table's columns. */
  record Row(String id, List<String> tests, List<String> results, String because, String sources) {}

  private final Map<String, String> head;
  final List<String> when = new ArrayList<>();
  final List<String> then = new ArrayList<>();
  final List<Row> rows = new ArrayList<>();

  /** A sheet with the entries of its head by key. */
  ImportedTable(Map<String, String> head) {
    this.head = head;
  }

  String name() {
    return head.getOrDefault("decision", "");
  }

  boolean votes() {
    return !head.getOrDefault("ranks", "").isEmpty();
  }

  /** Takes the results of a table with the same rows as further columns. */
  void widen(ImportedTable other) {
    then.addAll(other.then);
    for (int i = 0; i < rows.size(); i++) {
      rows.get(i).results().addAll(other.rows.get(i).results());
    }
  }

  boolean hasRowsOf(ImportedTable other) {
    return rows.size() == other.rows.size()
        && java.util.stream.IntStream.range(0, rows.size())
            .allMatch(i -> rows.get(i).tests().equals(other.rows.get(i).tests()));
  }

  /** The sheet; places are told only when it stands in a workbook. */
  DecisionDraft draft() {
    CellRef at = new CellRef(name(), 0, 0);
    return new DecisionDraft(
        text("decision", at),
        text("hit policy", at),
        text("asks", at),
        text("ranks", at),
        text("shown as", at),
        texts(when, at),
        texts(then, at),
        rows.stream()
            .map(
                row ->
                    new RowDraft(
                        new Text(row.id(), at),
                        texts(row.tests(), at),
                        texts(row.results(), at),
                        new Text(row.because(), at),
                        new Text(row.sources(), at)))
            .toList());
  }

  private Text text(String key, CellRef at) {
    return new Text(head.getOrDefault(key, ""), at);
  }

  private static List<Text> texts(List<String> texts, CellRef at) {
    return texts.stream().map(text -> new Text(text, at)).toList();
  }
}
