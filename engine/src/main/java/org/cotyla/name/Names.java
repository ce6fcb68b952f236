package org.cotyla.name;

import java.text.Normalizer;
import java.util.Locale;

/**
 * How plain-word names are compared: case, spaces, underscores, hyphens and accents do not matter.
 */
public final class Names {

  private Names() {}

  /**
   * The form by which two names are the same: {@code "Köhler line"} and {@code "kohler_line"} are
   * one.
   */
  public static String key(String name) {
    StringBuilder key = new StringBuilder(name.length());
    String parts = Normalizer.normalize(name, Normalizer.Form.NFD);
    for (int i = 0; i < parts.length(); i++) {
      char c = parts.charAt(i);
      if (!isSeparator(c) && Character.getType(c) != Character.NON_SPACING_MARK) {
        key.append(c);
      }
    }
    return key.toString().toLowerCase(Locale.ROOT);
  }

  /** Whether the character only separates the words of a name. */
  static boolean isSeparator(char c) {
    return Character.isWhitespace(c)
        || Character.isSpaceChar(c)
        || c == '_'
        || c == '-'
        || c == '\u2010'
        || c == '\u2011';
  }
}
