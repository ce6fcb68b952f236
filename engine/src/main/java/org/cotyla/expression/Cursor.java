package org.cotyla.expression;

import java.util.Optional;

/** A place in the text of a cell. */
final class Cursor {

  /** How deep brackets may nest; deeper text is refused rather than followed. */
  private static final int DEPTH_AT_MOST = 50;

  /** How many values and names a cell may join; more is refused. */
  private static final int PARTS_AT_MOST = 200;

  private final String text;
  private int at;
  private int depth;
  private int parts;
  private int nameFrom = -1;
  private int nameTo = -1;

  Cursor(String text) {
    this.text = text;
  }

  String text() {
    return text;
  }

  int at() {
    return at;
  }

  void moveTo(int place) {
    at = place;
  }

  /** Takes the name that stands here and ends at the place. */
  void takeName(int end) {
    nameFrom = at;
    nameTo = end;
    at = end;
  }

  /** The name that was taken right before the cursor, if that was a name. */
  Optional<String> nameBefore() {
    boolean rightBefore = nameTo >= 0 && nameTo <= at && text.substring(nameTo, at).isBlank();
    return rightBefore ? Optional.of(text.substring(nameFrom, nameTo)) : Optional.empty();
  }

  void skipSpace() {
    while (at < text.length()) {
      if (Character.isWhitespace(text.charAt(at))) {
        at++;
      } else if (text.startsWith("//", at)) {
        int end = text.indexOf('\n', at);
        at = end < 0 ? text.length() : end;
      } else if (text.startsWith("/*", at) && text.indexOf("*/", at + 2) >= 0) {
        at = text.indexOf("*/", at + 2) + 2;
      } else {
        return;
      }
    }
  }

  boolean atEnd() {
    skipSpace();
    return at >= text.length();
  }

  /** The next character after space, or 0 at the end. */
  char peek() {
    return atEnd() ? 0 : text.charAt(at);
  }

  boolean looksAt(String sign) {
    skipSpace();
    return text.startsWith(sign, at);
  }

  boolean take(String sign) {
    if (looksAt(sign)) {
      at += sign.length();
      return true;
    }
    return false;
  }

  /** Takes a word that is not the start of a longer one. */
  boolean takeWord(String word) {
    if (looksAtWord(word)) {
      at += word.length();
      return true;
    }
    return false;
  }

  /** Takes a word in capitals or not. */
  boolean takeWordInAnyCase(String word) {
    skipSpace();
    String there = text.substring(at, Math.min(text.length(), at + word.length()));
    return there.equalsIgnoreCase(word) && takeWord(there);
  }

  boolean looksAtWord(String word) {
    if (!looksAt(word)) {
      return false;
    }
    int end = at + word.length();
    return end == text.length() || !Character.isLetterOrDigit(text.charAt(end));
  }

  /** What is left, for messages; shortened. */
  String rest() {
    skipSpace();
    String rest = text.substring(at);
    return rest.length() > 40 ? rest.substring(0, 40) + "..." : rest;
  }

  /** The word at the cursor, up to a space or a sign, for messages. */
  String nextWord() {
    skipSpace();
    int end = at;
    while (end < text.length() && ",()[]<>=!*+\"".indexOf(text.charAt(end)) < 0) {
      end++;
    }
    String word = text.substring(at, end).strip();
    return word.isEmpty() ? rest() : word;
  }

  void enter() throws ExpressionException {
    if (++depth > DEPTH_AT_MOST) {
      throw new ExpressionException("brackets nest deeper than " + DEPTH_AT_MOST);
    }
  }

  /** Counts a value or name of a formula. */
  void part() throws ExpressionException {
    if (++parts > PARTS_AT_MOST) {
      throw new ExpressionException(
          "the cell joins more than " + PARTS_AT_MOST + " values and names",
          "split it into calculations");
    }
  }

  void leave() {
    depth--;
  }
}
