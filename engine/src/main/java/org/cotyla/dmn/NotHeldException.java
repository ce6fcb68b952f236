package org.cotyla.dmn;

/** A cell of a file says what no cell of a workbook can. */
final class NotHeldException extends Exception {

  private static final long serialVersionUID = 1L;

  NotHeldException(String message) {
    super(message);
  }

  String line() {
    return String.valueOf(getMessage());
  }
}
