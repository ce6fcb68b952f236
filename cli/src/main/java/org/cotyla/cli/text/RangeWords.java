package org.cotyla.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.expression.Symbol;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;

/** A set of values in plain words: {@code below 30 or at least 50}. */
final class RangeWords {

  private static final int MOST_WORDS = 12;

  private RangeWords() {}

  /**
   * The values in words, without a unit.
   *
   * @param allowed what the name may be at all, whose ends go without saying
   */
  static String of(ValueSet values, ValueSet allowed, Symbol symbol) {
    if (values.isFinite()) {
      boolean many = values.values().size() > MOST_WORDS;
      return many
          ? Words.some(values.values().stream().map(Value::plain).toList(), MOST_WORDS)
          : Words.values(PossibleValues.of(values), symbol);
    }
    List<String> words = new ArrayList<>();
    for (Interval part : values.parts()) {
      words.add(part(part, allowed));
    }
    return Words.or(words);
  }

  private static String part(Interval part, ValueSet allowed) {
    if (part.isPoint()) {
      return part.plain();
    }
    Interval hull = allowed.isEmpty() ? Interval.everything() : allowed.hull();
    Optional<Value> low = Optional.ofNullable(part.low()).filter(end -> !end.equals(hull.low()));
    Optional<Value> high = Optional.ofNullable(part.high()).filter(end -> !end.equals(hull.high()));
    String from =
        low.map(end -> (part.lowIncluded() ? "from " : "above ") + end.plain()).orElse("");
    String to =
        high.map(end -> (part.highIncluded() ? "up to " : "below ") + end.plain()).orElse("");
    if (low.isEmpty() && high.isEmpty()) {
      return "any value";
    }
    if (high.isEmpty()) {
      return part.lowIncluded() ? "at least " + low.get().plain() : from;
    }
    if (low.isEmpty()) {
      return part.highIncluded() ? "at most " + high.get().plain() : to;
    }
    return from + (part.highIncluded() ? " to " + high.get().plain() : " and " + to);
  }
}
