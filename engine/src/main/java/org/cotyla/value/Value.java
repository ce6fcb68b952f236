package org.cotyla.value;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.Locale;

/**
 * One known value. Values of the same type are ordered; comparing two types is a programming error.
 */
public sealed interface Value extends Comparable<Value> {

  /** Decimal arithmetic of the DMN standard (clause 10.3.2.3.1): 34 digits, half to even. */
  MathContext ARITHMETIC = MathContext.DECIMAL128;

  ValueType type();

  /** The value as a literal of S-FEEL: texts quoted, dates as {@code date("...")}. */
  String literal();

  /** The value as people write it: texts bare, true and false as yes and no. */
  String plain();

  static Value of(BigDecimal number) {
    return new NumberValue(number);
  }

  static Value of(long number) {
    return new NumberValue(BigDecimal.valueOf(number));
  }

  static Value of(String text) {
    return new TextValue(text);
  }

  static Value of(boolean yes) {
    return new YesNoValue(yes);
  }

  static Value of(LocalDate date) {
    return new DateValue(date);
  }

  /** A number. Equality is by quantity: 1.0 equals 1. */
  record NumberValue(BigDecimal number) implements Value {
    @Override
    public ValueType type() {
      return ValueType.NUMBER;
    }

    @Override
    public String literal() {
      return plain();
    }

    @Override
    public String plain() {
      if (number.signum() == 0) {
        return "0";
      }
      BigDecimal stripped = number.stripTrailingZeros();
      boolean huge = stripped.scale() < -40 || stripped.scale() > 60;
      return huge ? stripped.toString() : stripped.toPlainString();
    }

    @Override
    public int compareTo(Value other) {
      return number.compareTo(((NumberValue) other).number);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof NumberValue that && number.compareTo(that.number) == 0;
    }

    @Override
    public int hashCode() {
      // Numbers of one quantity have one double, and it is had without a division.
      return Double.hashCode(number.doubleValue());
    }
  }

  /** A text. */
  record TextValue(String text) implements Value {
    @Override
    public ValueType type() {
      return ValueType.TEXT;
    }

    @Override
    public String literal() {
      StringBuilder literal = new StringBuilder(text.length() + 2).append('"');
      text.chars().forEach(c -> literal.append(escaped((char) c)));
      return literal.append('"').toString();
    }

    /** Signs that spreadsheet programs or people change are written by their numbers. */
    private static String escaped(char c) {
      if (c == '"' || c == '\\') {
        return "\\" + c;
      }
      if (c == '\n') {
        return "\\n";
      }
      boolean mark = Character.getType(c) == Character.NON_SPACING_MARK;
      boolean safe = (c >= ' ' && c <= '~') || Character.isLetterOrDigit(c) || mark;
      return safe || Character.isSurrogate(c)
          ? String.valueOf(c)
          : String.format(Locale.ROOT, "\\u%04x", (int) c);
    }

    @Override
    public String plain() {
      return text;
    }

    @Override
    public int compareTo(Value other) {
      return text.compareTo(((TextValue) other).text);
    }
  }

  /** True or false. No comes before yes, which only serves a stable order. */
  record YesNoValue(boolean yes) implements Value {
    @Override
    public ValueType type() {
      return ValueType.YES_NO;
    }

    @Override
    public String literal() {
      return Boolean.toString(yes);
    }

    @Override
    public String plain() {
      return yes ? "yes" : "no";
    }

    @Override
    public int compareTo(Value other) {
      return Boolean.compare(yes, ((YesNoValue) other).yes);
    }
  }

  /** A calendar date. */
  record DateValue(LocalDate date) implements Value {
    @Override
    public ValueType type() {
      return ValueType.DATE;
    }

    @Override
    public String literal() {
      return "date(\"" + date + "\")";
    }

    @Override
    public String plain() {
      return date.toString();
    }

    @Override
    public int compareTo(Value other) {
      return date.compareTo(((DateValue) other).date);
    }
  }
}
