package org.cotyla.cli.text;

/** Text in a cell of a CSV file that a spreadsheet program may open. */
final class SafeCell {

  private SafeCell() {}

  /** Spreadsheets would run what begins like a formula; an apostrophe keeps it a text. */
  static String of(String text) {
    return !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
