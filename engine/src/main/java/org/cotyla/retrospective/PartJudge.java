package org.cotyla.retrospective;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.cotyla.evaluate.Engine;

/**
 * Judges a part of the rows of a CSV text wherever it lies: the way in for an engine that spreads
 * the work over many machines. Each machine makes its own from the workbook's bytes, since an
 * engine does not travel; what comes back does. A row is one line here.
 */
public final class PartJudge {

  private static final int LOT = 200;

  private final RowJudge judge;
  private final CSVFormat format;

  /** A line and its row's number as a spreadsheet program shows it; the headings are row 1. */
  public record Line(long number, String text) {}

  private PartJudge(RowJudge judge, CSVFormat format) {
    this.judge = judge;
    this.format = format;
  }

  /**
   * A judge by the mapping that the line of headings suggests.
   *
   * @param today the day after which no past case can be
   * @throws org.cotyla.issue.RejectedException when cases cannot be judged by the mapping
   */
  public static PartJudge of(Engine engine, String headings, LocalDate today) {
    CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(CsvRows.delimiter(headings)).get();
    try {
      List<String> columns = CsvRows.parse(headings, format).stream().map(String::strip).toList();
      ColumnMapping mapping =
          ColumnMapping.of(columns, engine.protocol(), Map.of()).checked("headings");
      return new PartJudge(new RowJudge(engine, Optional.empty(), mapping, today), format);
    } catch (IOException malformed) {
      throw new IllegalArgumentException("the line of headings is not CSV", malformed);
    }
  }

  /** Judges all of these lines; blank ones are passed over. */
  public PartTotals judge(Iterator<Line> lines) {
    PartTotals sum = PartTotals.none();
    List<RawRow> lot = new ArrayList<>(LOT);
    while (lines.hasNext()) {
      Line line = lines.next();
      RawRow row = CsvRows.parsed(line.number(), line.text(), format);
      if (!row.isBlank()) {
        lot.add(row);
      }
      if (lot.size() == LOT || !lines.hasNext()) {
        Tallied judged = judge.judge(lot);
        sum =
            sum.merge(
                new PartTotals(RunCounts.NONE.plus(judged), judged.totals(), judged.setAside()));
        lot.clear();
      }
    }
    return sum;
  }
}
