package org.cotyla.check;

import org.cotyla.protocol.Row;

/** Whether two rows of a table give the same. */
final class SameResult {

  private SameResult() {}

  static boolean of(Row a, Row b) {
    if (!a.vote().equals(b.vote()) || a.results().size() != b.results().size()) {
      return false;
    }
    for (int i = 0; i < a.results().size(); i++) {
      if (!a.results().get(i).expression().equals(b.results().get(i).expression())) {
        return false;
      }
    }
    return true;
  }
}
