package org.cotyla.name;

import java.text.Normalizer;

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
    // Only what is not ASCII can have marks to part with, and most names are ASCII.
    boolean plain = isPlain(name);
    String parts = plain ? name : Normalizer.normalize(name, Normalizer.Form.NFD);
    for (int i = 0; i < parts.length(); i++) {
      char c = parts.charAt(i);
      if (isSmallLetter(c)) {
        key.append(c);
      } else if (!isSeparator(c) && Character.getType(c) != Character.NON_SPACING_MARK) {
        key.append(isApostrophe(c) ? '\'' : folded(c));
      }
    }
    return key.toString();
  }

  private static boolean isPlain(String name) {
    for (int i = 0; i < name.length(); i++) {
      if (name.charAt(i) >= 128) {
        return false;
      }
    }
    return true;
  }

  /** What stays as it is in any case; most letters of most names are so. */
  private static boolean isSmallLetter(char c) {
    return c >= 'a' && c <= 'z';
  }

  /** Letter by letter, since a whole word's capitals change with their place in it. */
  private static char folded(char c) {
    return Character.toLowerCase(Character.toUpperCase(c));
  }

  private static boolean isApostrophe(char c) {
    return c == '\u2018' || c == '\u2019' || c == '\u02bc';
  }

  /** Whether the character only separates the words of a name. */
  static boolean isSeparator(char c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c) || c == '_' || isDash(c);
  }

  /** A hyphen, or what a spreadsheet program makes of one. */
  static boolean isDash(char c) {
    return c == '-' || (c >= '\u2010' && c <= '\u2015') || c == '\u2212';
  }
}
