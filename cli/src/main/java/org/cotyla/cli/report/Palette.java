package org.cotyla.cli.report;

import java.util.Locale;

/** The few colours of a report; each meaning is also carried by a shape, a hatch or a word. */
enum Palette {
  /** What is read. */
  INK("#1d2327"),
  /** What is read second. */
  QUIET("#545d63"),
  /** Headings, and what speaks for. */
  ACCENT("#1f5562"),
  /** What speaks against; always hatched or with a sign as well. */
  AGAINST("#8a3f1d"),
  /** Lines that part things. */
  RULE("#c9cdca"),
  /** Lines that mean something, such as axes and boxes. */
  LINE("#6f777b"),
  /** A calm ground for what belongs together. */
  TINT("#f2f4f1"),
  /** What is possible but open. */
  OPEN("#dbe5e6"),
  PAPER("#ffffff");

  private final String hex;

  Palette(String hex) {
    this.hex = hex;
  }

  String hex() {
    return hex;
  }

  /** The name by which the style sheet asks for it. */
  String variable() {
    return name().toLowerCase(Locale.ROOT);
  }
}
