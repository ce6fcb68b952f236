package org.cotyla.cli;

import java.util.Locale;
import org.cotyla.cli.text.Style;

/** When answers are coloured. */
enum ColourMode {
  /** On a terminal, unless NO_COLOR is set. */
  AUTO,
  ALWAYS,
  NEVER;

  Style style(boolean takesColour) {
    boolean coloured = this == ALWAYS || (this == AUTO && takesColour);
    return coloured ? Style.COLOURED : Style.PLAIN;
  }

  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
