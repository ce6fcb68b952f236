package org.cotyla.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.finding.Given;
import org.cotyla.issue.Place;
import org.jspecify.annotations.Nullable;

/** Reads what a case says of one field. Where it is faulty, reading goes on after it. */
final class FindingReader {

  private static final int LONGEST_TEXT = 10_000;
  private static final int MOST_DIGITS = 34;
  private static final int LARGEST_EXPONENT = 6144;
  private static final String ONE_OF_ADVICE =
      "for one of several, it is not known which, write {\"one of\": [...]}";

  private final JsonParser parser;
  private final Place place;
  private final CaseFaults faults;

  FindingReader(JsonParser parser, Place place, CaseFaults faults) {
    this.parser = parser;
    this.place = place;
    this.faults = faults;
  }

  /** What is said; nothing when that is null or faulty. */
  Optional<Given> read() throws IOException {
    JsonToken token = parser.currentToken();
    if (token == JsonToken.VALUE_NULL) {
      return Optional.empty();
    }
    if (token == JsonToken.START_OBJECT) {
      return object(false);
    }
    return scalar("the finding", ONE_OF_ADVICE);
  }

  private Optional<Given> object(boolean isAlternative) throws IOException {
    FindingParts parts = new FindingParts(place, faults, isAlternative);
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String key = parser.currentName();
      JsonToken token = parser.nextToken();
      if (!parts.isNew(key)) {
        parser.skipChildren();
        continue;
      }
      switch (key) {
        case "value" -> parts.value(token, scalarOrNull("`value`"));
        case "unit" -> parts.unit(text("`unit`"));
        case "low" -> parts.low(token, numberOrNull("`low`"));
        case "high" -> parts.high(token, numberOrNull("`high`"));
        case "one of" -> parts.oneOf(alternatives());
        default -> text("`about`");
      }
    }
    return parts.given();
  }

  private @Nullable Given scalarOrNull(String what) throws IOException {
    return parser.currentToken() == JsonToken.VALUE_NULL
        ? null
        : scalar(what, "expected a number, a text, true or false").orElse(null);
  }

  private Optional<Given> scalar(String what, String expected) throws IOException {
    JsonToken token = parser.currentToken();
    return switch (token) {
      case VALUE_STRING ->
          Optional.ofNullable(shortText(parser, place, what, faults)).map(Given::of);
      case VALUE_TRUE, VALUE_FALSE -> Optional.of(Given.of(parser.getBooleanValue()));
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> Optional.ofNullable(number()).map(Given::of);
      default -> {
        faults.wrongKind(place, what, token, expected);
        parser.skipChildren();
        yield Optional.empty();
      }
    };
  }

  private @Nullable List<Given> alternatives() throws IOException {
    if (parser.currentToken() != JsonToken.START_ARRAY) {
      faults.wrongKind(place, "`one of`", parser.currentToken(), "expected a list: [\"a\", \"b\"]");
      parser.skipChildren();
      return null;
    }
    List<Given> alternatives = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      Optional<Given> alternative =
          parser.currentToken() == JsonToken.START_OBJECT
              ? object(true)
              : scalar("an alternative", "expected a number, a text, true or false");
      alternative.ifPresent(alternatives::add);
    }
    return alternatives;
  }

  private @Nullable BigDecimal numberOrNull(String what) throws IOException {
    JsonToken token = parser.currentToken();
    if (token == JsonToken.VALUE_NULL || token.isNumeric()) {
      return token.isNumeric() ? number() : null;
    }
    faults.wrongKind(place, what, token, "expected a number");
    parser.skipChildren();
    return null;
  }

  /** The number exactly as it stands there, in the digits of the DMN standard's decimals. */
  private @Nullable BigDecimal number() throws IOException {
    String text = parser.getText();
    if (text.length() <= 2 * MOST_DIGITS) {
      BigDecimal number = exact(text);
      if (number != null) {
        return number;
      }
    }
    faults.tooLarge(
        place,
        "the number " + CaseFaults.quoted(text) + " is too long or too large",
        "a number has at most "
            + MOST_DIGITS
            + " digits and an exponent up to "
            + LARGEST_EXPONENT);
    return null;
  }

  private static @Nullable BigDecimal exact(String text) {
    try {
      BigDecimal number = new BigDecimal(text);
      long exponent = (long) number.precision() - number.scale() - 1;
      boolean fits = number.precision() <= MOST_DIGITS && Math.abs(exponent) <= LARGEST_EXPONENT;
      return fits ? number : null;
    } catch (NumberFormatException exponentTooLarge) {
      return null;
    }
  }

  private @Nullable String text(String what) throws IOException {
    JsonToken token = parser.currentToken();
    if (token == JsonToken.VALUE_STRING) {
      return shortText(parser, place, what, faults);
    }
    if (token != JsonToken.VALUE_NULL) {
      faults.wrongKind(place, what, token, "expected a text");
      parser.skipChildren();
    }
    return null;
  }

  /** The text at the parser, unless it is too long to be meant. */
  static @Nullable String shortText(JsonParser parser, Place place, String what, CaseFaults faults)
      throws IOException {
    int length = parser.getTextLength();
    if (length > LONGEST_TEXT) {
      faults.tooLarge(place, what + " has " + length + " characters", "at most " + LONGEST_TEXT);
      return null;
    }
    return parser.getText();
  }
}
