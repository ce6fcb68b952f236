package org.cotyla.expression;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cotyla.value.Value;

/** Reads the literals of S-FEEL: numbers, texts, true and false, dates. */
final class LiteralReader {

  /** The longest number that is read; a longer one is refused. */
  private static final int DIGITS_AT_MOST = 100;

  private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?|\\.\\d+");
  private static final Pattern ISO_DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}(?![\\d-])");
  private static final Pattern DATE_CALL = Pattern.compile("date\\s*\\(\\s*\"([^\"]*)\"\\s*\\)");
  private static final Pattern AT_LITERAL = Pattern.compile("@\"([^\"]*)\"");

  private final Cursor cursor;
  private final Dialect dialect;

  LiteralReader(Cursor cursor, Dialect dialect) {
    this.cursor = cursor;
    this.dialect = dialect;
  }

  /** The literal at the cursor, or nothing when none starts there. */
  Optional<Value> read() throws ExpressionException {
    cursor.skipSpace();
    Optional<Value> date = date();
    if (date.isPresent()) {
      return date;
    }
    char next = cursor.peek();
    if (next == '"') {
      return Optional.of(Value.of(text()));
    }
    if (Character.isDigit(next) || next == '.') {
      return number();
    }
    return yesOrNo();
  }

  private Optional<Value> yesOrNo() {
    boolean kind = dialect == Dialect.KIND;
    if (cursor.takeWord("true") || (kind && cursor.takeWord("yes"))) {
      return Optional.of(Value.of(true));
    }
    if (cursor.takeWord("false") || (kind && cursor.takeWord("no"))) {
      return Optional.of(Value.of(false));
    }
    return Optional.empty();
  }

  private Optional<Value> number() throws ExpressionException {
    Optional<String> digits = take(NUMBER, 0);
    if (digits.isEmpty()) {
      return Optional.empty();
    }
    if (digits.get().length() > DIGITS_AT_MOST) {
      throw new ExpressionException("a number has more than " + DIGITS_AT_MOST + " digits");
    }
    return Optional.of(Value.of(new BigDecimal(digits.get())));
  }

  private Optional<Value> date() throws ExpressionException {
    Optional<String> iso = dialect == Dialect.KIND ? take(ISO_DATE, 0) : Optional.empty();
    Optional<String> written = iso.isPresent() ? iso : take(DATE_CALL, 1);
    written = written.isPresent() ? written : take(AT_LITERAL, 1);
    if (written.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(Value.of(LocalDate.parse(written.get())));
    } catch (DateTimeParseException notADate) {
      throw new ExpressionException(
          "`" + written.get() + "` is not a date", "write year-month-day, as 2026-01-31");
    }
  }

  private Optional<String> take(Pattern pattern, int group) {
    Matcher matcher = pattern.matcher(cursor.text()).region(cursor.at(), cursor.text().length());
    if (!matcher.lookingAt()) {
      return Optional.empty();
    }
    cursor.moveTo(matcher.end());
    return Optional.of(matcher.group(group));
  }

  private String text() throws ExpressionException {
    String source = cursor.text();
    StringBuilder text = new StringBuilder();
    int i = cursor.at() + 1;
    while (i < source.length() && source.charAt(i) != '"') {
      if (source.charAt(i) != '\\' || i + 1 == source.length()) {
        text.append(source.charAt(i++));
        continue;
      }
      char escaped = source.charAt(i + 1);
      int hex = escaped == 'u' ? 4 : escaped == 'U' ? 6 : 0;
      if (hex > 0 && isHex(source, i + 2, hex)) {
        text.appendCodePoint(Integer.parseInt(source.substring(i + 2, i + 2 + hex), 16));
        i += 2 + hex;
      } else {
        text.append(unescaped(escaped));
        i += 2;
      }
    }
    if (i >= source.length()) {
      throw new ExpressionException("a text starts with a quote and does not end with one");
    }
    cursor.moveTo(i + 1);
    return text.toString();
  }

  private static boolean isHex(String source, int from, int digits) {
    if (from + digits > source.length()) {
      return false;
    }
    String hex = source.substring(from, from + digits);
    return hex.chars().allMatch(c -> Character.digit(c, 16) >= 0)
        && Character.isValidCodePoint(Integer.parseInt(hex, 16));
  }

  private static String unescaped(char escaped) {
    return switch (escaped) {
      case 'n' -> "\n";
      case 't' -> "\t";
      case 'r' -> "\r";
      case '"', '\\', '\'' -> String.valueOf(escaped);
      default -> "\\" + escaped;
    };
  }
}
