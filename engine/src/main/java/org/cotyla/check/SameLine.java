package org.cotyla.check;

import org.cotyla.issue.CellRef;
import org.cotyla.issue.Place;

/** Whether a place is a cell in the same line of the same sheet. */
final class SameLine {

  private SameLine() {}

  static boolean of(CellRef cell, Place place) {
    return place instanceof CellRef other
        && other.sheet().equals(cell.sheet())
        && other.row() == cell.row();
  }
}
