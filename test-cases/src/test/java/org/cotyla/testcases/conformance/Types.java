package org.cotyla.testcases.conformance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.testcases.conformance.DmnModel.ItemType;
import org.cotyla.value.ValueType;

/** The types of a model, and how a value is made to fit one (DMN clause 10.3.2.9.4). */
final class Types {

  private static final Map<String, ValueType> STANDARD =
      Map.of(
          "number", ValueType.NUMBER,
          "string", ValueType.TEXT,
          "boolean", ValueType.YES_NO,
          "date", ValueType.DATE);

  private final Map<String, ItemType> items;

  Types(Map<String, ItemType> items) {
    this.items = items;
  }

  /** The engine's type for a type of the model, when it has one. */
  Optional<ValueType> valueType(String name) {
    ItemType item = items.get(name);
    if (item == null) {
      return Optional.ofNullable(STANDARD.get(name));
    }
    return item.isList() ? Optional.empty() : item.base().flatMap(this::valueType);
  }

  /** The value as the type asks for it: itself, out of or into a list of one, or null. */
  FeelValue fit(FeelValue value, Optional<String> type) {
    return type.map(name -> fitNamed(value, name)).orElse(value);
  }

  private FeelValue fitNamed(FeelValue value, String name) {
    if (value instanceof FeelValue.Null) {
      return value;
    }
    ItemType item = items.get(name);
    if (item != null) {
      return item.isList() ? list(value, item) : one(value, item);
    }
    ValueType standard = STANDARD.get(name);
    if (standard == null) {
      return value;
    }
    FeelValue single = unlisted(value);
    boolean fits = single instanceof FeelValue.Single known && known.value().type() == standard;
    return fits ? single : new FeelValue.Null();
  }

  private FeelValue list(FeelValue value, ItemType item) {
    List<FeelValue> given = value instanceof FeelValue.Items items ? items.items() : List.of(value);
    List<FeelValue> fitted = new ArrayList<>();
    for (FeelValue each : given) {
      FeelValue fit = each instanceof FeelValue.Null ? each : one(each, item);
      if (fit instanceof FeelValue.Null && !(each instanceof FeelValue.Null)) {
        return fit;
      }
      fitted.add(fit);
    }
    return new FeelValue.Items(fitted);
  }

  private FeelValue one(FeelValue value, ItemType item) {
    if (item.components().isEmpty()) {
      return fit(value, item.base());
    }
    if (!(unlisted(value) instanceof FeelValue.Structure structure)) {
      return new FeelValue.Null();
    }
    Map<String, FeelValue> parts = new LinkedHashMap<>(structure.parts());
    for (Map.Entry<String, ItemType> component : item.components().entrySet()) {
      FeelValue part = parts.get(component.getKey());
      if (part == null) {
        return new FeelValue.Null();
      }
      ItemType type = component.getValue();
      FeelValue fit = type.isList() ? list(part, type) : one(part, type);
      if (fit instanceof FeelValue.Null && !(part instanceof FeelValue.Null)) {
        return fit;
      }
      parts.put(component.getKey(), fit);
    }
    return new FeelValue.Structure(parts);
  }

  private static FeelValue unlisted(FeelValue value) {
    return value instanceof FeelValue.Items list && list.items().size() == 1
        ? list.items().get(0)
        : value;
  }
}
