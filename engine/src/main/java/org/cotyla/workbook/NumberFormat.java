package org.cotyla.workbook;

import java.util.Locale;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.DateUtil;
import org.jspecify.annotations.Nullable;

/** What a cell's number format makes of the number that is stored. */
enum NumberFormat {
  /** The number itself is seen. */
  PLAIN,
  /** A hundred times the number is seen. */
  PERCENT,
  /** A date with its year is seen. */
  DATE,
  /**
   * A date without day or year, or a time, is seen: what a spreadsheet program makes of {@code 3-5}
   * or {@code 1/2} by itself.
   */
  PART_OF_DATE;

  /**
   * Far more than a spreadsheet program lets anyone type; a longer one is an attack on patterns.
   */
  private static final int LONGEST = 1_000;

  /** What is shown as it is, and brackets (a colour, a locale) but those of a duration. */
  private static final String LITERALS = "\"[^\"]*\"|\\\\.|_.|\\*.|\\[(?![hmsHMS]+\\])[^\\]]*\\]";

  static NumberFormat of(int id, @Nullable String custom) {
    @Nullable String format = custom == null ? BuiltinFormats.getBuiltinFormat(id) : custom;
    if (format == null || format.equalsIgnoreCase("General")) {
      return PLAIN;
    }
    if (format.length() > LONGEST) {
      throw new IllegalArgumentException("a number format is too long");
    }
    String signs = format.replaceAll(LITERALS, "").toLowerCase(Locale.ROOT);
    if (signs.contains("%")) {
      return PERCENT;
    }
    // The letters are looked at first: the library loads calendars, which a fresh start feels.
    boolean mayBeDate = signs.chars().anyMatch(c -> "dmyhs".indexOf(c) >= 0);
    if (!mayBeDate || !DateUtil.isADateFormat(id, format)) {
      return PLAIN;
    }
    return signs.contains("y") && signs.contains("d") ? DATE : PART_OF_DATE;
  }

  boolean isDate() {
    return this == DATE || this == PART_OF_DATE;
  }
}
