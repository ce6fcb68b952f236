package org.cotyla.workbook;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Text as people see it in a cell: odd spaces and line breaks made plain, invisible characters
 * gone.
 */
final class TidyText {

  /** How the file format writes a character that XML cannot hold, for example a carriage return. */
  private static final Pattern ESCAPED = Pattern.compile("_x([0-9A-Fa-f]{4})_");

  private static final int SHORT = 60;

  private TidyText() {}

  static String of(String stored) {
    StringBuilder tidy = new StringBuilder(stored.length());
    boolean afterBreak = false;
    for (int i = 0; i < stored.length(); i++) {
      char c = stored.charAt(i);
      if (isBreak(c)) {
        afterBreak = true;
      } else if (Character.isSpaceChar(c) || Character.isWhitespace(c)) {
        tidy.append(' ');
      } else if (Character.getType(c) != Character.FORMAT && !Character.isISOControl(c)) {
        if (afterBreak) {
          removeSpacesAtEnd(tidy);
          tidy.append(' ');
          afterBreak = false;
        }
        tidy.append(c);
      }
    }
    return tidy.toString().strip();
  }

  private static boolean isBreak(char c) {
    return c == '\n' || c == '\r' || c == '\t';
  }

  private static void removeSpacesAtEnd(StringBuilder text) {
    int end = text.length();
    while (end > 0 && text.charAt(end - 1) == ' ') {
      end--;
    }
    text.setLength(end);
  }

  /** The same of a text with the file format's escapes. */
  static String unescaped(String stored) {
    if (!stored.contains("_x")) {
      return of(stored);
    }
    Matcher escaped = ESCAPED.matcher(stored);
    String plain =
        escaped.replaceAll(
            found ->
                Matcher.quoteReplacement(
                    String.valueOf((char) Integer.parseInt(found.group(1), 16))));
    return of(plain);
  }

  /** At most a line of it, for messages. */
  static String shortened(String text) {
    return text.length() <= SHORT ? text : text.substring(0, SHORT - 1) + "…";
  }
}
