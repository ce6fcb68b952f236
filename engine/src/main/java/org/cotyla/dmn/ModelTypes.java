package org.cotyla.dmn;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.cotyla.expression.Symbol;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/** The names of the model's types. Names of types are single words, which no tool stumbles over. */
final class ModelTypes {

  private final Set<String> taken = new HashSet<>();
  private final Map<Symbol, String> bySymbol = new LinkedHashMap<>();

  /**
   * A type made of others.
   *
   * @param name its name
   * @param listOf the type of its members when it is a list, else empty
   * @param components its parts when it has such, by name and type
   */
  record Composed(String name, String listOf, List<TableText.OutputColumn> components) {}

  private final List<Composed> composed = new ArrayList<>();

  /** The types made of others, in the order of definition. */
  List<Composed> composed() {
    return List.copyOf(composed);
  }

  String listOf(String type, String thing) {
    String name = define(thing + " list");
    composed.add(new Composed(name, type, List.of()));
    return name;
  }

  String madeOf(List<TableText.OutputColumn> components, String thing) {
    String name = define(thing);
    composed.add(new Composed(name, "", components));
    return name;
  }

  /** The type of what the symbol stands for: its own, or the plain one of its kind of value. */
  String of(Symbol symbol) {
    String own = bySymbol.get(symbol);
    return own == null ? plain(symbol.type()) : own;
  }

  String define(Symbol symbol) {
    String name = define(symbol.name());
    bySymbol.put(symbol, name);
    return name;
  }

  /** A new type named after the thing. */
  String define(String thing) {
    StringBuilder name = new StringBuilder("t");
    for (String word : thing.split("[^\\p{L}\\p{Nd}]+")) {
      if (!word.isEmpty()) {
        name.append(word.substring(0, 1).toUpperCase(Locale.ROOT)).append(word.substring(1));
      }
    }
    String unique = name.toString();
    for (int i = 2; !taken.add(unique.toLowerCase(Locale.ROOT)); i++) {
      unique = name + "_" + i;
    }
    return unique;
  }

  static String plain(ValueType type) {
    return switch (type) {
      case NUMBER -> "number";
      case TEXT -> "string";
      case YES_NO -> "boolean";
      case DATE -> "date";
    };
  }

  /** The allowed values as S-FEEL tests, or empty when every value of the type is allowed. */
  static String allowed(Symbol symbol, ValueSet allowed, boolean orNothing) {
    if (!symbol.isChoice() && allowed.equals(ValueSet.all(symbol.type()))) {
      return "";
    }
    String values =
        symbol.isChoice()
            ? symbol.choices().stream().map(ModelWording::quoted).collect(Collectors.joining(", "))
            : allowed.parts().stream().map(ModelTypes::test).collect(Collectors.joining(", "));
    return orNothing ? values + ", null" : values;
  }

  private static String test(Interval part) {
    Value low = part.low();
    Value high = part.high();
    if (low == null || high == null) {
      Value end = low == null ? high : low;
      String sign = low == null ? "<" : ">";
      boolean included = low == null ? part.highIncluded() : part.lowIncluded();
      return end == null ? "-" : sign + (included ? "= " : " ") + end.literal();
    }
    if (part.isPoint()) {
      return low.literal();
    }
    return (part.lowIncluded() ? "[" : "(")
        + low.literal()
        + ".."
        + high.literal()
        + (part.highIncluded() ? "]" : ")");
  }
}
