package org.cotyla.evaluate;

import java.util.List;
import org.cotyla.issue.CellRef;

/**
 * The protocol contradicts itself on this case.
 *
 * @param code stable code
 * @param decision the decision in which it does
 * @param message one line that names the rows
 * @param rows the cells of the rows' ids
 */
public record Fault(String code, String decision, String message, List<CellRef> rows) {
  public Fault {
    rows = List.copyOf(rows);
  }

  /** The fault as it is printed. */
  public String plain() {
    return "error " + code + " " + decision + ": " + message;
  }
}
