package org.cotyla.workbook;

import java.util.Optional;
import org.cotyla.issue.Place;

/** Counts what has been read of a workbook and refuses it when a limit is passed. */
final class CellCount {

  private final Refusal refusal;
  private int cells;
  private long characters;
  private int merged;

  CellCount(Refusal refusal) {
    this.refusal = refusal;
  }

  void sheets(int sheets) {
    if (sheets > Limits.SHEETS) {
      throw refusal.because("W015", "the workbook has more than 200 sheets, the most that is read");
    }
  }

  /** Counts a cell that has content. */
  void add(Cell cell) {
    if (cell.at().row() >= Limits.ROWS) {
      throw tooFar(cell, "W016", "the sheet has content below row 20,000, the last that is read");
    }
    if (cell.at().column() >= Limits.COLUMNS) {
      throw tooFar(cell, "W017", "the sheet has content beyond column 200, the last that is read");
    }
    if (cell.text().length() > Limits.CELL_CHARACTERS) {
      throw tooFar(cell, "W019", "the cell has more than 32,767 characters, the most that is read");
    }
    cells++;
    characters += cell.text().length();
    if (cells > Limits.CELLS) {
      throw refusal.because(
          "W018", "the workbook has more than 1,000,000 cells with content, the most that is read");
    }
    if (characters > Limits.ALL_CHARACTERS) {
      throw refusal.because(
          "W020",
          "the workbook has more than 32,000,000 characters in its cells, the most that is read");
    }
  }

  /** Counts cells that are merged into one. */
  void addMerged() {
    if (++merged > Limits.MERGED) {
      throw refusal.because(
          "W051", "the workbook has more than 20,000 merged cells, the most that is read");
    }
  }

  private static RuntimeException tooFar(Cell cell, String code, String message) {
    Place place = cell.at();
    return Refusal.at(
        place, code, message, Optional.of("clear what is not needed, and save again"));
  }
}
