package org.cotyla.workbook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.cotyla.draft.Text;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issues;
import org.cotyla.name.Names;

/** Takes cells of the grid into the draft, and says then what is wrong with them. */
final class CellReading {

  private static final int LONGEST_KEY = 60;

  private final Issues issues;

  CellReading(Issues issues) {
    this.issues = issues;
  }

  /** The cell's text; a fault of the cell is reported. */
  Text text(Cell cell) {
    cell.fault()
        .ifPresent(fault -> issues.error(fault.code(), cell.at(), fault.message(), fault.help()));
    return new Text(cell.text(), cell.at());
  }

  /** The text of a cell where a spreadsheet program may have made a date of something else. */
  Text textNotMadeDate(Cell cell) {
    if (cell.partOfDate()) {
      issues.warning(
          "W027",
          cell.at(),
          "a date or time stands here: `" + cell.text() + "`",
          "if you typed something like 3-5, 1/2 or 3:5, give the cell the number format Text and"
              + " type it again");
    }
    return text(cell);
  }

  /** Whether the cell is the word, compared as names are. */
  static boolean says(Cell cell, String word) {
    // A key word is short: long texts need not be compared, and there may be very many.
    return cell.text().length() <= LONGEST_KEY && Names.key(cell.text()).equals(Names.key(word));
  }

  static boolean saysOneOf(Cell cell, Collection<String> words) {
    return words.stream().anyMatch(word -> says(cell, word));
  }

  /** Says what of the sheet is hidden, since it counts although nobody sees it. */
  void noteHidden(Sheet sheet) {
    if (sheet.hidden()) {
      issues.note("W026", sheet.corner(), "the sheet is hidden, and it is read");
    }
    List<GridRow> hidden = sheet.rows().stream().filter(GridRow::hidden).toList();
    if (!hidden.isEmpty()) {
      List<Integer> numbers = hidden.stream().map(row -> row.index() + 1).toList();
      issues.note(
          "W026",
          hidden.get(0).first().at(),
          (numbers.size() == 1 ? "row " : "rows ") + runs(numbers) + " hidden, and read");
    }
    Set<Integer> columns = new TreeSet<>(sheet.hiddenColumns());
    if (!columns.isEmpty()) {
      List<String> letters = columns.stream().map(CellReading::letters).toList();
      issues.note(
          "W026",
          new CellRef(sheet.name(), 0, columns.iterator().next()),
          (letters.size() == 1 ? "column " : "columns ")
              + String.join(", ", letters)
              + " hidden, and read");
    }
  }

  private static String letters(int column) {
    String cell = new CellRef("", 0, column).plain();
    return cell.substring(1, cell.length() - 1);
  }

  private static String runs(List<Integer> numbers) {
    List<String> runs = new ArrayList<>();
    for (int i = 0; i < numbers.size(); ) {
      int start = i;
      while (i + 1 < numbers.size() && numbers.get(i + 1) == numbers.get(i) + 1) {
        i++;
      }
      runs.add(start == i ? "" + numbers.get(i) : numbers.get(start) + "-" + numbers.get(i));
      i++;
    }
    return String.join(", ", runs);
  }
}
