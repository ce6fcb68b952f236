package org.cotyla.retrospective;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.workbook.RowSheet;

/** The rows of a workbook's first sheet; the workbook's own limits bound what is held. */
final class SheetRows implements CaseRows {

  private final List<RowSheet.Row> rows;
  private final List<String> headings;
  private int next = 1;

  SheetRows(String name, byte[] file) {
    this.rows = RowSheet.read(name, file).rows();
    this.headings = rows.get(0).cells().stream().map(String::strip).toList();
  }

  @Override
  public List<String> headings() {
    return headings;
  }

  @Override
  public Optional<RawRow> next() {
    if (next >= rows.size()) {
      return Optional.empty();
    }
    RowSheet.Row row = rows.get(next++);
    if (row.fault().isPresent()) {
      String text = String.join("\u001f", row.cells());
      return Optional.of(RawRow.broken(row.number(), text, row.fault().get()));
    }
    List<String> cells = new ArrayList<>(row.cells());
    // A sheet keeps no cells to the right of the last that has content.
    while (cells.size() < headings.size()) {
      cells.add("");
    }
    return Optional.of(RawRow.of(row.number(), cells));
  }

  @Override
  public long position() {
    return next;
  }

  @Override
  public long size() {
    return rows.size();
  }

  /** The grid holds no row that is blank. */
  @Override
  public long blank() {
    return 0;
  }

  @Override
  public void close() {}
}
