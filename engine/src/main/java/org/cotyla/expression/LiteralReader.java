package org.cotyla.expression;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cotyla.expression.Expression.Literal;
import org.cotyla.expression.Expression.Nothing;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;

/** Reads the literals of S-FEEL: numbers, texts, true and false, dates. */
final class LiteralReader {

  /** The longest number that is read; a longer one is refused. */
  private static final int DIGITS_AT_MOST = 100;

  /** The largest power of ten of a number: that of a decimal of 34 digits (IEEE 754). */
  private static final int EXPONENT_AT_MOST = 6144;

  private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?|\\.\\d+");
  private static final Pattern EXPONENT = Pattern.compile("[eE]([+-]?\\d{1,9})(?![\\d.])");
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
  Optional<Expression> read() throws ExpressionException {
    cursor.skipSpace();
    Optional<Expression> date = date();
    if (date.isPresent()) {
      return date;
    }
    char next = cursor.peek();
    if (next == '"') {
      return Optional.of(new Literal(Value.of(text())));
    }
    Optional<Value> value =
        Character.isDigit(next) || next == '.' ? number() : yesOrNo().map(Value::of);
    return value.map(Literal::new);
  }

  private Optional<Boolean> yesOrNo() {
    if (cursor.takeWord("true") || takesKindly("yes") || takesKindly("true")) {
      return Optional.of(true);
    }
    if (cursor.takeWord("false") || takesKindly("no") || takesKindly("false")) {
      return Optional.of(false);
    }
    return Optional.empty();
  }

  /** Spreadsheet programs like to start a cell with a capital. */
  private boolean takesKindly(String word) {
    return dialect == Dialect.KIND && cursor.takeWordInAnyCase(word);
  }

  private Optional<Value> number() throws ExpressionException {
    Optional<String> digits = take(NUMBER, 0);
    if (digits.isEmpty()) {
      return Optional.empty();
    }
    if (digits.get().length() > DIGITS_AT_MOST) {
      throw new ExpressionException("a number has more than " + DIGITS_AT_MOST + " digits");
    }
    return Optional.of(Value.of(new BigDecimal(digits.get()).scaleByPowerOfTen(exponent())));
  }

  /** The power of ten after the digits; in a workbook numbers are written out. */
  private int exponent() throws ExpressionException {
    Optional<String> written = dialect == Dialect.KIND ? Optional.empty() : take(EXPONENT, 1);
    int exponent = written.map(Integer::parseInt).orElse(0);
    if (Math.abs(exponent) > EXPONENT_AT_MOST) {
      throw new ExpressionException("a number has an exponent beyond " + EXPONENT_AT_MOST);
    }
    return exponent;
  }

  private Optional<Expression> date() throws ExpressionException {
    Optional<String> iso = dialect == Dialect.KIND ? take(ISO_DATE, 0) : Optional.empty();
    Optional<String> called = iso.isPresent() ? iso : take(DATE_CALL, 1);
    Optional<String> written = called.isPresent() ? called : take(AT_LITERAL, 1);
    if (written.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new Literal(Value.of(LocalDate.parse(written.get()))));
    } catch (DateTimeParseException notADate) {
      if (dialect == Dialect.STRICT && called.isPresent()) {
        // By the standard the function date gives null for a text that is no date.
        return Optional.of(new Nothing(ValueType.DATE));
      }
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
