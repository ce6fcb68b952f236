package org.cotyla.testcases.faults;

/** How a fault was told. */
enum Told {
  /** The workbook was refused, with the cell. */
  REFUSED("refused"),
  /** A case was found in which an edited decision gives something else. */
  BY_A_CASE("by a case"),
  /** The comparison says that a field takes other values, which no case of both can show. */
  BY_THE_FIELD("by field"),
  /** A check has something to say that it did not say before. */
  BY_A_REMARK("by remark"),
  /** It was proven that the fault changes no meaning. */
  NO_CHANGE("no change"),
  /** None of these; the comparison says that it is undecided. */
  MISSED("missed");

  private final String words;

  Told(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }
}
