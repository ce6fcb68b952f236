package org.cotyla.cli.text;

/** Makes text that others wrote safe to show: it stays on its line and cannot steer a terminal. */
public final class Printable {

  private Printable() {}

  /** The text with line ends and tabs as spaces, and other control characters as question marks. */
  public static String line(String text) {
    StringBuilder line = new StringBuilder(text.length());
    text.codePoints().map(Printable::shown).forEach(line::appendCodePoint);
    return line.toString();
  }

  private static int shown(int character) {
    if (character == '\n' || character == '\r' || character == '\t') {
      return ' ';
    }
    return switch (Character.getType(character)) {
      case Character.CONTROL, Character.FORMAT, Character.SURROGATE -> '?';
      case Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> ' ';
      default -> character;
    };
  }
}
