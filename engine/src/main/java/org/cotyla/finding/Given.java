package org.cotyla.finding;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What a case says of one field, before it is read against the protocol. */
public sealed interface Given {

  /** A number, with the UCUM code of its unit when the case names one. */
  record Amount(BigDecimal number, Optional<String> unit) implements Given {}

  /** A word or sentence; also a number, a quantity or a date that was written as text. */
  record Word(String text) implements Given {}

  /** Yes or no. */
  record YesNo(boolean yes) implements Given {}

  /** A date. */
  record Day(LocalDate date) implements Given {}

  /** A number that is only known to lie in a range, ends included. */
  record Range(BigDecimal low, BigDecimal high, Optional<String> unit) implements Given {}

  /** One of several, it is not known which. */
  record OneOf(List<Given> alternatives) implements Given {
    public OneOf {
      alternatives = List.copyOf(alternatives);
    }
  }

  /**
   * What a person wrote in a form, with the UCUM code beside it if one stands there: a value, a
   * range as {@code 70..80}, or alternatives as {@code 2A or 2B}. The field decides how it is read.
   */
  record Written(String text, Optional<String> unit) implements Given {}

  static Given of(BigDecimal number) {
    return new Amount(number, Optional.empty());
  }

  static Given of(BigDecimal number, String unit) {
    return new Amount(number, Optional.of(unit));
  }

  static Given of(String text) {
    return new Word(text);
  }

  static Given of(boolean yes) {
    return new YesNo(yes);
  }

  static Given of(LocalDate date) {
    return new Day(date);
  }

  static Given between(BigDecimal low, BigDecimal high) {
    return new Range(low, high, Optional.empty());
  }

  /**
   * What a plain Java value says.
   *
   * @throws IllegalArgumentException when it is neither a number, a text, a boolean, a date nor a
   *     Given
   */
  static Given ofPlain(Object value) {
    if (value instanceof Given given) {
      return given;
    }
    if (value instanceof BigDecimal number) {
      return of(number);
    }
    if (value instanceof Number number) {
      return of(new BigDecimal(number.toString()));
    }
    if (value instanceof String text) {
      return of(text);
    }
    if (value instanceof Boolean yes) {
      return of(yes);
    }
    if (value instanceof LocalDate date) {
      return of(date);
    }
    throw new IllegalArgumentException("a case cannot state a " + value.getClass().getSimpleName());
  }
}
