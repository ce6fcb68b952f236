package org.cotyla.expression;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Puts right what spreadsheet programs change while people type a test or a formula. */
public final class CellText {

  private static final Map<Character, String> AUTOCORRECTED =
      Map.ofEntries(
          Map.entry('≤', "<="),
          Map.entry('⩽', "<="),
          Map.entry('≥', ">="),
          Map.entry('⩾', ">="),
          Map.entry('≠', "!="),
          Map.entry('–', "-"),
          Map.entry('—', "-"),
          Map.entry('−', "-"),
          Map.entry('‑', "-"),
          Map.entry('…', ".."),
          Map.entry('“', "\""),
          Map.entry('”', "\""),
          Map.entry('„', "\""),
          Map.entry('‘', "'"),
          Map.entry('’', "'"),
          Map.entry('×', "*"),
          Map.entry('÷', "/"),
          Map.entry('⁄', "/"));

  private static final Map<Character, String> FRACTIONS =
      Map.of('½', ".5", '¼', ".25", '¾', ".75", '⅛', ".125", '⅜', ".375", '⅝', ".625", '⅞', ".875");

  private static final Pattern COMMA_DECIMAL = Pattern.compile("\\d,\\d");

  private CellText() {}

  /** The text with autocorrected signs and odd spaces put back to what the keyboard has. */
  public static String plain(String typed) {
    StringBuilder plain = new StringBuilder(typed.length());
    for (int i = 0; i < typed.length(); i++) {
      char c = typed.charAt(i);
      if (FRACTIONS.containsKey(c)) {
        boolean afterDigit = i > 0 && Character.isDigit(typed.charAt(i - 1));
        plain.append(afterDigit ? "" : "0").append(FRACTIONS.get(c));
      } else if (isInvisible(c)) {
        continue;
      } else if (Character.isSpaceChar(c) || Character.isWhitespace(c)) {
        plain.append(' ');
      } else {
        plain.append(AUTOCORRECTED.getOrDefault(c, String.valueOf(c)));
      }
    }
    return plain.toString().strip();
  }

  private static boolean isInvisible(char c) {
    return c == '\u200b' || c == '\u200c' || c == '\u200d' || c == '\ufeff' || c == '\u00ad';
  }

  /** Refuses a comma between two digits, which may be a decimal or a list. */
  static void refuseCommaDecimal(String text) throws ExpressionException {
    Matcher comma = COMMA_DECIMAL.matcher(text.replaceAll("\"(?:\\\\.|[^\"\\\\])*\"", "\"\""));
    if (comma.find()) {
      throw new ExpressionException(
          "`" + text + "` has a comma between two digits, which may be a decimal or a list",
          "write a decimal with a point, as 3.5, and a list with a space after the comma, as 3, 5");
    }
  }
}
