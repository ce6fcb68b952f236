package org.cotyla.workbook;

/** The sizes beyond which a workbook is refused; the format's document states each. */
final class Limits {

  static final int FILE_BYTES = 16 << 20;
  static final long UNPACKED_BYTES = 256L << 20;
  static final int PARTS = 2_000;

  /** A part may unpack to so many times its packed size, once it is larger than the free size. */
  static final long RATIO = 200;

  static final long RATIO_FREE_BYTES = 1L << 20;

  static final int SHEETS = 200;
  static final int ROWS = 20_000;
  static final int COLUMNS = 200;
  static final int CELLS = 1_000_000;
  static final int MERGED = 20_000;
  static final int CELL_CHARACTERS = 32_767;

  /** All cells together: a long shared text that a million cells point to is a bomb as well. */
  static final long ALL_CHARACTERS = 32_000_000;

  private Limits() {}
}
