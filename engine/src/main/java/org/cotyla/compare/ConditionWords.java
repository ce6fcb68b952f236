package org.cotyla.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;
import org.jspecify.annotations.Nullable;

/**
 * A finding and its values as people say it.
 *
 * @param all everything that the finding can be, so that its own limits need not be said
 * @param given whether a case states it; otherwise it is worked out
 */
record ConditionWords(
    String name, String unit, List<String> choices, PossibleValues all, boolean given) {

  /** {@code köhler line intact}, {@code ischial lysis at least 15 mm}. */
  String of(PossibleValues among) {
    return name + " " + valueOf(among);
  }

  String valueOf(PossibleValues among) {
    if (among.isNothing()) {
      return given ? "not there yet" : "without a result";
    }
    ValueSet values = among.values();
    String words = values.isFinite() ? listed(values) : intervals(values);
    // A decision without a result is seldom, and goes without saying beside its results.
    return given && among.orNothing() ? words + " or not there yet" : words;
  }

  private String listed(ValueSet values) {
    ValueSet others =
        all.values().isFinite()
            ? all.values().intersect(values.complement())
            : ValueSet.none(values.type());
    boolean shorter =
        values.type() == ValueType.TEXT
            && !others.isEmpty()
            && others.values().size() * 2 < values.values().size();
    return shorter ? "other than " + or(words(others)) : or(words(values));
  }

  private List<String> words(ValueSet values) {
    return values.values().stream()
        .sorted(
            Comparator.<Value>comparingInt(value -> choices.indexOf(value.plain()))
                .thenComparing(Comparator.naturalOrder()))
        .map(this::withUnit)
        .toList();
  }

  private String intervals(ValueSet values) {
    if (values.type() == ValueType.TEXT) {
      return "other than " + or(words(values.complement()));
    }
    List<String> parts = new ArrayList<>();
    values.parts().forEach(part -> parts.add(interval(part)));
    return or(parts);
  }

  private String interval(Interval part) {
    Value low = part.low();
    Value high = part.high();
    if (part.isPoint() && low != null) {
      return withUnit(low);
    }
    Interval whole = all.values().isEmpty() ? part : all.values().hull();
    boolean fromStart = low == null || isEnd(low, whole.low());
    boolean toEnd = high == null || isEnd(high, whole.high());
    String from = low == null || fromStart ? "" : (part.lowIncluded() ? "from " : "above ");
    String to = high == null || toEnd ? "" : (part.highIncluded() ? "up to " : "below ");
    if (from.isEmpty() && to.isEmpty()) {
      return "anything";
    }
    if (to.isEmpty() && low != null) {
      return (part.lowIncluded() ? "at least " : "above ") + withUnit(low);
    }
    if (from.isEmpty() && high != null) {
      return (part.highIncluded() ? "at most " : "below ") + withUnit(high);
    }
    return low == null || high == null
        ? part.plain()
        : from + withUnit(low) + " " + to + withUnit(high);
  }

  private static boolean isEnd(Value value, @Nullable Value end) {
    return end != null && value.equals(end);
  }

  private String withUnit(Value value) {
    return value.plain() + (unit.isEmpty() ? "" : " " + unit);
  }

  private static String or(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
  }
}
