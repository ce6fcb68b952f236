package org.cotyla.draft;

import org.cotyla.issue.CellRef;

/**
 * A piece of text and the cell that it stands in.
 *
 * @param text the text without space around it; empty when the cell is blank
 * @param at the cell
 */
public record Text(String text, CellRef at) {

  public Text {
    text = text.strip();
  }

  public boolean isBlank() {
    return text.isEmpty();
  }

  /** Whether the cell is blank or holds only a dash, which people write for 'none'. */
  public boolean isNone() {
    return isBlank() || text.equals("-") || text.equals("–") || text.equals("—");
  }
}
