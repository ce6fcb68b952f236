package org.cotyla.json;

import com.fasterxml.jackson.core.JsonToken;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cotyla.finding.Given;
import org.cotyla.issue.Place;
import org.jspecify.annotations.Nullable;

/** The parts of a finding that is written as an object, and what they say together. */
final class FindingParts {

  private static final List<String> KEYS =
      List.of("value", "unit", "low", "high", "one of", "about");
  private static final String FORMS =
      "write {\"value\": 34, \"unit\": \"mm\"}, {\"low\": 30, \"high\": 40} or {\"one of\": [...]}";

  private final Place place;
  private final CaseFaults faults;
  private final boolean isAlternative;
  private final List<String> keys;
  private final Set<String> seen = new HashSet<>();

  private @Nullable Given value;
  private boolean valueIsNumber;
  private @Nullable String unit;
  private @Nullable BigDecimal low;
  private @Nullable BigDecimal high;
  private @Nullable List<Given> oneOf;
  private boolean faulty;

  FindingParts(Place place, CaseFaults faults, boolean isAlternative) {
    this.place = place;
    this.faults = faults;
    this.isAlternative = isAlternative;
    this.keys = isAlternative ? KEYS.stream().filter(key -> !key.equals("one of")).toList() : KEYS;
  }

  /** Whether the key is known and stands there for the first time; otherwise that is a fault. */
  boolean isNew(String key) {
    boolean known = keys.contains(key);
    boolean isNew = known && seen.add(key);
    if (!known) {
      faults.unknownKey(place, key, keys, Optional.empty());
    } else if (!isNew) {
      faults.twice(place, key);
    }
    faulty |= !isNew;
    return isNew;
  }

  void value(JsonToken token, @Nullable Given given) {
    value = given;
    valueIsNumber = token.isNumeric();
    faulty |= given == null && token != JsonToken.VALUE_NULL;
  }

  void unit(@Nullable String text) {
    unit = text;
  }

  void low(JsonToken token, @Nullable BigDecimal number) {
    low = number;
    faulty |= number == null && token != JsonToken.VALUE_NULL;
  }

  void high(JsonToken token, @Nullable BigDecimal number) {
    high = number;
    faulty |= number == null && token != JsonToken.VALUE_NULL;
  }

  void oneOf(@Nullable List<Given> alternatives) {
    oneOf = alternatives;
    faulty |= alternatives == null;
  }

  /** What the parts say; nothing when that is null or they do not fit together. */
  Optional<Given> given() {
    if (faulty) {
      return Optional.empty();
    }
    boolean range = seen.contains("low") || seen.contains("high");
    int forms = (seen.contains("value") ? 1 : 0) + (range ? 1 : 0) + (oneOf != null ? 1 : 0);
    if (forms != 1) {
      faults.incomplete(
          place, forms == 0 ? "the object states no value" : "the object mixes two forms", FORMS);
      return Optional.empty();
    }
    if (unit != null && (oneOf != null || (value != null && !valueIsNumber))) {
      faults.incomplete(place, "a unit goes with a number only", FORMS);
      return Optional.empty();
    }
    Optional<Given> given = range ? range() : oneOf().or(this::single);
    if (isAlternative && given.isEmpty() && !faulty) {
      faults.incomplete(place, "an alternative states nothing", FORMS);
    }
    return given;
  }

  private Optional<Given> oneOf() {
    return Optional.ofNullable(oneOf).map(Given.OneOf::new);
  }

  private Optional<Given> single() {
    return value instanceof Given.Amount amount
        ? Optional.of(new Given.Amount(amount.number(), Optional.ofNullable(unit)))
        : Optional.ofNullable(value);
  }

  private Optional<Given> range() {
    if (low != null && high != null) {
      return Optional.of(new Given.Range(low, high, Optional.ofNullable(unit)));
    }
    boolean isBlank = low == null && high == null && seen.containsAll(List.of("low", "high"));
    if (!isBlank) {
      faulty = true;
      faults.incomplete(
          place,
          low == null ? "the range has no `low`" : "the range has no `high`",
          "state both ends; an end that is not known is the end of what is allowed");
    }
    return Optional.empty();
  }
}
