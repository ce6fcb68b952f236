package org.cotyla.finite;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/** Regions in plain words: {@code width above 30 mm and grade low or middle}. Immutable. */
public final class RegionWords {

  private static final int LONGEST_LIST = 6;
  private static final String ANY = "any value";

  private final Map<String, String> units = new HashMap<>();
  private final Map<String, ValueSet> allowed = new HashMap<>();

  public RegionWords(Protocol protocol) {
    for (Field field : protocol.fields()) {
      units.put(field.name(), field.unit());
      allowed.put(field.name(), field.allowed());
    }
    for (Calculation calculation : protocol.calculations()) {
      units.put(calculation.name(), calculation.unit());
    }
  }

  /** The region's names and values, joined by and; {@code any case} when it has none. */
  public String plain(Region region) {
    List<String> sides = new ArrayList<>();
    region.sides().forEach((symbol, values) -> sides.add(plain(symbol, values)));
    return sides.isEmpty() ? "any case" : joined(sides, " and ");
  }

  /** One name with what it can be. */
  public String plain(Symbol symbol, PossibleValues values) {
    String words = values(symbol, values);
    return symbol.name() + (words.startsWith(ANY) ? " with " : " ") + words;
  }

  /** What a name can be, with its unit. */
  public String values(Symbol symbol, PossibleValues possible) {
    String words = possible.values().isEmpty() ? "" : known(symbol, possible.values());
    if (!possible.orNothing()) {
      return words;
    }
    return words.isEmpty() ? "nothing" : words + " or nothing";
  }

  private String known(Symbol symbol, ValueSet values) {
    ValueSet all = allowed.getOrDefault(symbol.name(), ValueSet.all(symbol.type()));
    if (values.isFinite()) {
      ValueSet rest = all.intersect(values.complement());
      boolean mostOfThem = all.isFinite() && values.parts().size() > LONGEST_LIST;
      return mostOfThem && !rest.isEmpty() && rest.parts().size() <= LONGEST_LIST
          ? "anything but " + list(symbol, rest)
          : list(symbol, values);
    }
    if (values.containsAll(all)) {
      return ANY;
    }
    return joined(values.parts().stream().map(part -> stretch(part, all, symbol)).toList(), " or ");
  }

  private String list(Symbol symbol, ValueSet values) {
    List<String> choices = symbol.choices();
    return joined(
            values.values().stream()
                .map(Value::plain)
                .sorted(Comparator.comparingInt(choices::indexOf))
                .toList(),
            " or ")
        + unit(symbol);
  }

  private String unit(Symbol symbol) {
    String unit = units.getOrDefault(symbol.name(), "");
    return unit.isEmpty() || unit.equals("1") || symbol.type() != ValueType.NUMBER
        ? ""
        : " " + unit;
  }

  /** An end that the field's own range has need not be said. */
  private String stretch(Interval part, ValueSet all, Symbol symbol) {
    if (part.isPoint() && part.low() != null) {
      return part.low().plain() + unit(symbol);
    }
    Interval range = all.isEmpty() ? Interval.everything() : all.hull();
    Value low = part.low();
    Value high = part.high();
    boolean fromStart =
        low == null || (low.equals(range.low()) && (part.lowIncluded() || !range.lowIncluded()));
    boolean toEnd =
        high == null
            || (high.equals(range.high()) && (part.highIncluded() || !range.highIncluded()));
    String from = low == null ? "" : (part.lowIncluded() ? "from " : "above ") + low.plain();
    String to = high == null ? "" : (part.highIncluded() ? "up to " : "below ") + high.plain();
    if (fromStart && toEnd) {
      return ANY;
    }
    String words = fromStart ? to : toEnd ? from : from + " " + to;
    return words + unit(symbol);
  }

  private static String joined(List<String> words, String last) {
    int end = words.size() - 1;
    return end < 1
        ? String.join("", words)
        : words.subList(0, end).stream().collect(Collectors.joining(", ")) + last + words.get(end);
  }
}
