package org.cotyla.finding;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cotyla.finding.Given.Amount;
import org.cotyla.finding.Given.Day;
import org.cotyla.finding.Given.OneOf;
import org.cotyla.finding.Given.Range;
import org.cotyla.finding.Given.Word;
import org.cotyla.finding.Given.Written;
import org.cotyla.finding.Given.YesNo;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.name.NameIndex;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.Field;
import org.cotyla.unit.UnitFactors;
import org.cotyla.unit.Units;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/** Reads what a case says of one field: its type, its unit and whether it is allowed. */
final class GivenReader {

  private static final Pattern QUANTITY = Pattern.compile("([+-]?\\d+(?:\\.\\d+)?)\\s*(\\S.*)?");
  private static final Pattern COMMA_NUMBER = Pattern.compile("[+-]?\\d+,\\d+(\\s.*)?");

  private final Field field;
  private final NameIndex<String> choices;
  private final UnitFactors factors;
  private final Place place;
  private final Issues issues;

  GivenReader(
      Field field, NameIndex<String> choices, UnitFactors factors, Place place, Issues issues) {
    this.field = field;
    this.choices = choices;
    this.factors = factors;
    this.place = place;
    this.issues = issues;
  }

  /** The values that the case leaves possible, or nothing when it is faulty. */
  Optional<ValueSet> read(Given given) {
    if (given instanceof Written written) {
      return new WrittenReader(field, choices, place, issues).read(written).flatMap(this::read);
    }
    if (given instanceof OneOf oneOf) {
      return alternatives(oneOf.alternatives());
    }
    if (given instanceof Range range) {
      return range(range);
    }
    return value(given).flatMap(this::allowed).map(ValueSet::of);
  }

  private Optional<ValueSet> alternatives(List<Given> alternatives) {
    ValueSet union = ValueSet.none(field.symbol().type());
    boolean sound = !alternatives.isEmpty();
    if (alternatives.isEmpty()) {
      issues.error("C011", place, "the list of alternatives is empty");
    }
    for (Given alternative : alternatives) {
      Optional<ValueSet> values = read(alternative);
      union = values.map(union::union).orElse(union);
      sound &= values.isPresent();
    }
    return sound ? Optional.of(union) : Optional.empty();
  }

  private Optional<ValueSet> range(Range range) {
    if (field.symbol().type() != ValueType.NUMBER) {
      return wrongType("a range");
    }
    Optional<Value> low = amount(range.low(), range.unit());
    Optional<Value> high = amount(range.high(), range.unit());
    if (low.isEmpty() || high.isEmpty()) {
      return Optional.empty();
    }
    if (low.get().compareTo(high.get()) > 0) {
      issues.error(
          "C011",
          place,
          "the range from "
              + Value.of(range.low()).plain()
              + " to "
              + Value.of(range.high()).plain()
              + " is empty");
      return Optional.empty();
    }
    boolean sound = allowed(low.get()).isPresent() & allowed(high.get()).isPresent();
    ValueSet between = ValueSet.between(ValueType.NUMBER, low.get(), true, high.get(), true);
    return sound ? Optional.of(between.intersect(field.allowed())) : Optional.empty();
  }

  private Optional<Value> value(Given given) {
    return switch (field.symbol().type()) {
      case NUMBER -> number(given);
      case YES_NO -> yesNo(given);
      case DATE -> date(given);
      case TEXT -> field.symbol().isChoice() ? choice(given) : text(given);
    };
  }

  private Optional<Value> number(Given given) {
    if (given instanceof Amount amount) {
      return amount(amount.number(), amount.unit());
    }
    if (!(given instanceof Word word)) {
      return wrongType(describe(given));
    }
    if (COMMA_NUMBER.matcher(word.text().strip()).matches()) {
      issues.error(
          "C012",
          place,
          "`" + word.text() + "` has a comma",
          "write a decimal with a point, as 3.5");
      return Optional.empty();
    }
    Matcher quantity = QUANTITY.matcher(word.text().strip());
    if (!quantity.matches()) {
      return wrongType("`" + word.text() + "`");
    }
    return amount(new BigDecimal(quantity.group(1)), Optional.ofNullable(quantity.group(2)));
  }

  private Optional<Value> amount(BigDecimal number, Optional<String> stated) {
    // UCUM writes micro as u; keyboards and laboratories write either of two Greek letters.
    Optional<String> unit = stated.map(code -> code.replace('\u00b5', 'u').replace('\u03bc', 'u'));
    if (unit.isEmpty() || unit.get().equals(field.unit())) {
      return Optional.of(Value.of(number));
    }
    String wanted = field.unit().isEmpty() ? "1" : field.unit();
    Optional<BigDecimal> converted = factors.convert(number, unit.get(), wanted);
    if (converted.isEmpty() && !Units.isKnown(unit.get())) {
      issues.error(
          "C008",
          place,
          "`" + unit.get() + "` is not a unit of UCUM",
          "this field is in " + wanted + "; capitals matter");
    } else if (converted.isEmpty()) {
      issues.error(
          "C007",
          place,
          "the unit `" + unit.get() + "` does not fit",
          "this field is in " + wanted);
    }
    return converted.map(Value::of);
  }

  private Optional<Value> yesNo(Given given) {
    if (given instanceof YesNo answer) {
      return Optional.of(Value.of(answer.yes()));
    }
    String word =
        given instanceof Word said ? said.text().strip().toLowerCase(java.util.Locale.ROOT) : "";
    return switch (word) {
      case "yes", "true" -> Optional.of(Value.of(true));
      case "no", "false" -> Optional.of(Value.of(false));
      default -> wrongType(describe(given));
    };
  }

  private Optional<Value> date(Given given) {
    if (given instanceof Day day) {
      return Optional.of(Value.of(day.date()));
    }
    if (given instanceof Word word) {
      try {
        return Optional.of(Value.of(LocalDate.parse(word.text().strip())));
      } catch (DateTimeParseException notADate) {
        return wrongType("`" + word.text() + "`");
      }
    }
    return wrongType(describe(given));
  }

  private Optional<Value> choice(Given given) {
    String word = given instanceof Amount amount ? Value.of(amount.number()).plain() : null;
    word = given instanceof Word said ? said.text() : word;
    if (word == null) {
      return wrongType(describe(given));
    }
    String said = word;
    Optional<String> known = choices.find(said.strip());
    if (known.isEmpty()) {
      issues.error(
          "C005",
          place,
          "`" + said + "` is not a value of it",
          NearestWord.help(said, field.symbol().choices()));
    }
    return known.map(Value::of);
  }

  private Optional<Value> text(Given given) {
    return given instanceof Word word
        ? Optional.of(Value.of(word.text()))
        : wrongType(describe(given));
  }

  private Optional<Value> allowed(Value value) {
    if (!field.allowed().contains(value)) {
      issues.error(
          "C006",
          place,
          "`" + withUnit(value) + "` is outside what is allowed",
          "allowed: "
              + field.allowed().plain()
              + (field.unit().isEmpty() ? "" : " " + field.unit()));
      return Optional.empty();
    }
    boolean unusual = field.usual().isPresent() && !field.usual().get().contains(value);
    if (unusual) {
      issues.warning(
          "C030",
          place,
          "`" + withUnit(value) + "` is unusual (usually " + field.usual().get().plain() + ")",
          "check the value and its unit");
    }
    return Optional.of(value);
  }

  private String withUnit(Value value) {
    return field.unit().isEmpty() ? value.plain() : value.plain() + " " + field.unit();
  }

  private <T> Optional<T> wrongType(String what) {
    issues.error("C004", place, what + " is not a " + wantedWord(), "write " + example());
    return Optional.empty();
  }

  private String wantedWord() {
    return field.symbol().isChoice() ? "choice" : field.symbol().type().word();
  }

  private String example() {
    return switch (field.symbol().type()) {
      case NUMBER -> field.unit().isEmpty() ? "a number" : "a number in " + field.unit();
      case YES_NO -> "yes or no";
      case DATE -> "a date, as 2026-01-31";
      case TEXT ->
          field.symbol().isChoice() ? String.join(", ", field.symbol().choices()) : "a text";
    };
  }

  private static String describe(Given given) {
    if (given instanceof Amount amount) {
      return "`" + Value.of(amount.number()).plain() + "`";
    }
    if (given instanceof Word word) {
      return "`" + word.text() + "`";
    }
    if (given instanceof YesNo answer) {
      return "`" + answer.yes() + "`";
    }
    return given instanceof Day day ? "`" + day.date() + "`" : "this";
  }
}
