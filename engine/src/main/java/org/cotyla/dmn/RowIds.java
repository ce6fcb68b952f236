package org.cotyla.dmn;

import java.util.HashSet;
import java.util.Set;
import org.cotyla.name.Names;

/** Gives each row an id that no other row of the file has. Not thread-safe. */
final class RowIds {

  private static final int LENGTH_AT_MOST = 24;

  private final Set<String> taken = new HashSet<>();
  private int tables;

  /** Begins a table, by whose number rows without an id of their own are called. */
  void beginTable() {
    tables++;
  }

  /** The stated id when it is short and free, else one from the table's and the row's number. */
  String of(String stated, int row) {
    boolean usable =
        !stated.isEmpty()
            && stated.length() <= LENGTH_AT_MOST
            && !Names.key(stated).equals("default");
    String wanted = usable ? stated : "T" + tables + "-" + (row + 1);
    String unique = wanted;
    for (int i = 2; !taken.add(Names.key(unique)); i++) {
      unique = wanted + "-" + i;
    }
    return unique;
  }
}
