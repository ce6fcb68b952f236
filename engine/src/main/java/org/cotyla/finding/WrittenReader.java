package org.cotyla.finding;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cotyla.finding.Given.Amount;
import org.cotyla.finding.Given.OneOf;
import org.cotyla.finding.Given.Range;
import org.cotyla.finding.Given.Word;
import org.cotyla.finding.Given.Written;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.name.NameIndex;
import org.cotyla.protocol.Field;
import org.cotyla.value.ValueType;
import org.jspecify.annotations.Nullable;

/** Tells a value, a range and alternatives apart in what a person wrote for one field. */
final class WrittenReader {

  private static final int LONGEST_VALUE = 200;
  private static final int LONGEST_TEXT = 10_000;

  /** The digits of the DMN standard's decimals. */
  private static final String NUMBER = "([+-]?\\d{1,34}(?:\\.\\d{1,34})?)";

  private static final String UNIT = "(?:\\s*([^\\s\\d.,].*))?";
  private static final Pattern QUANTITY = Pattern.compile(NUMBER + UNIT);
  private static final Pattern RANGE =
      Pattern.compile(NUMBER + "\\s*(?:\\.\\.|to|-|–)\\s*" + NUMBER + UNIT);
  private static final Pattern OR = Pattern.compile("\\s+or\\s+", Pattern.CASE_INSENSITIVE);
  private static final Pattern COMMA_OR_OR =
      Pattern.compile("\\s*,\\s*(?:or\\s+)?|\\s+or\\s+", Pattern.CASE_INSENSITIVE);

  private final Field field;
  private final NameIndex<String> choices;
  private final Place place;
  private final Issues issues;

  WrittenReader(Field field, NameIndex<String> choices, Place place, Issues issues) {
    this.field = field;
    this.choices = choices;
    this.place = place;
    this.issues = issues;
  }

  /** What is said in one of the other forms; nothing when it is too long to be meant. */
  Optional<Given> read(Written written) {
    String text = written.text().strip();
    int most = isFreeText() ? LONGEST_TEXT : LONGEST_VALUE;
    if (text.length() > most) {
      issues.error(
          "C025", place, "the value has " + text.length() + " characters", "at most " + most);
      return Optional.empty();
    }
    if (isFreeText() || isChoice(text)) {
      return Optional.of(new Word(text));
    }
    Pattern between = field.symbol().isChoice() ? COMMA_OR_OR : OR;
    List<Given> alternatives =
        between
            .splitAsStream(text)
            .map(alternative -> one(alternative.strip(), written.unit()))
            .toList();
    return Optional.of(alternatives.size() == 1 ? alternatives.get(0) : new OneOf(alternatives));
  }

  private boolean isFreeText() {
    return field.symbol().type() == ValueType.TEXT && !field.symbol().isChoice();
  }

  private boolean isChoice(String text) {
    return choices.find(text).isPresent();
  }

  private Given one(String text, Optional<String> unitBeside) {
    if (field.symbol().type() != ValueType.NUMBER) {
      return new Word(text);
    }
    Matcher range = RANGE.matcher(text);
    if (range.matches()) {
      return new Range(
          new BigDecimal(range.group(1)),
          new BigDecimal(range.group(2)),
          unit(range.group(3), unitBeside));
    }
    Matcher quantity = QUANTITY.matcher(text);
    return quantity.matches()
        ? new Amount(new BigDecimal(quantity.group(1)), unit(quantity.group(2), unitBeside))
        : new Word(text);
  }

  /** A unit that stands with the number goes before the one beside it. */
  private static Optional<String> unit(@Nullable String withNumber, Optional<String> beside) {
    return withNumber == null ? beside : Optional.of(withNumber.strip());
  }
}
