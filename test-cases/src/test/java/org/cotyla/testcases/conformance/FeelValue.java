package org.cotyla.testcases.conformance;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.Value.NumberValue;

/** A value of FEEL, as the tests of the TCK give and expect them. */
sealed interface FeelValue {

  /** A number, string, boolean or date. */
  record Single(Value value) implements FeelValue {
    @Override
    public String toString() {
      return value.literal();
    }
  }

  /** Null. */
  record Null() implements FeelValue {
    @Override
    public String toString() {
      return "null";
    }
  }

  /** A list. */
  record Items(List<FeelValue> items) implements FeelValue {
    public Items {
      items = List.copyOf(items);
    }

    @Override
    public String toString() {
      return items.toString();
    }
  }

  /** A context. */
  record Structure(Map<String, FeelValue> parts) implements FeelValue {
    public Structure {
      parts = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(parts));
    }

    @Override
    public String toString() {
      return parts.toString();
    }
  }

  /** A value of a type that the engine does not have. */
  record Foreign(String type, String text) implements FeelValue {
    @Override
    public String toString() {
      return type + " " + text;
    }
  }

  /** How far a number may be from an expected one that was given as a binary fraction. */
  BigDecimal CLOSE_ENOUGH = new BigDecimal("0.00000001");

  static FeelValue of(Value value) {
    return new Single(value);
  }

  /** The value, which must be certain: the TCK leaves nothing open. */
  static FeelValue of(PossibleValues values) {
    if (values.isNothing()) {
      return new Null();
    }
    return values
        .single()
        .map(FeelValue::of)
        .orElseThrow(() -> new IllegalStateException("not certain: " + values.plain()));
  }

  /** Whether the value is the expected one; numbers may differ in the ninth decimal. */
  default boolean meets(FeelValue expected) {
    if (this instanceof Items mine && expected instanceof Items theirs) {
      return mine.items().size() == theirs.items().size()
          && java.util.stream.IntStream.range(0, mine.items().size())
              .allMatch(i -> mine.items().get(i).meets(theirs.items().get(i)));
    }
    if (this instanceof Structure mine && expected instanceof Structure theirs) {
      return mine.parts().keySet().equals(theirs.parts().keySet())
          && mine.parts().entrySet().stream()
              .allMatch(part -> part.getValue().meets(theirs.parts().get(part.getKey())));
    }
    boolean numbers =
        this instanceof Single mine
            && mine.value() instanceof NumberValue
            && expected instanceof Single theirs
            && theirs.value() instanceof NumberValue;
    return numbers ? difference(expected).compareTo(CLOSE_ENOUGH) <= 0 : equals(expected);
  }

  private BigDecimal difference(FeelValue expected) {
    return number(this).subtract(number(expected)).abs();
  }

  private static BigDecimal number(FeelValue value) {
    return ((NumberValue) ((Single) value).value()).number();
  }

  /** The single values in it by their paths, as {@code Person.age}. */
  static Map<String, FeelValue> paths(Map<String, FeelValue> names) {
    Map<String, FeelValue> paths = new LinkedHashMap<>();
    names.forEach(
        (name, value) -> {
          paths.put(name, value);
          if (value instanceof Structure structure) {
            paths(structure.parts()).forEach((path, part) -> paths.put(name + "." + path, part));
          }
        });
    return paths;
  }
}
