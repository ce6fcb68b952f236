package org.cotyla.workbook;

import java.util.Optional;
import org.cotyla.issue.CellRef;

/**
 * A cell of the grid.
 *
 * @param at where it is
 * @param text what stands there as tidy text; empty when it is blank
 * @param fault why what stands there cannot be used; said only when the cell is read
 * @param partOfDate whether the text is a date or time whose format shows only part of it
 */
record Cell(CellRef at, String text, Optional<Fault> fault, boolean partOfDate) {

  /** What is wrong with a cell, and what to do about it. */
  record Fault(String code, String message, String help) {}

  static Cell of(CellRef at, String text) {
    return new Cell(at, text, Optional.empty(), false);
  }

  static Cell faulty(CellRef at, String text, String code, String message, String help) {
    return new Cell(at, text, Optional.of(new Fault(code, message, help)), false);
  }

  boolean isBlank() {
    return text.isEmpty();
  }
}
