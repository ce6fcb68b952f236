package org.cotyla.testcases.conformance;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;

/**
 * One line of unary-tests.jsonl: a cell of a table, an input and whether the cell matches.
 *
 * @param number the line's number in the file
 * @param cell the cell
 * @param type the input's type, by the standard's name
 * @param input the input; null for the standard's null
 * @param matches whether the cell matches
 * @param variables what names in the cell stand for
 * @param disputed whether the expected answer is contrary to the standard
 */
record UnaryLine(
    int number,
    String cell,
    String type,
    JsonNode input,
    boolean matches,
    Map<String, Value> variables,
    boolean disputed) {

  private static final ObjectMapper JSON =
      new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

  private static final Map<String, ValueType> TYPES =
      Map.of(
          "number", ValueType.NUMBER,
          "string", ValueType.TEXT,
          "boolean", ValueType.YES_NO,
          "date", ValueType.DATE);

  static UnaryLine read(String text, int number) {
    try {
      JsonNode line = JSON.readTree(text);
      Map<String, Value> variables = new LinkedHashMap<>();
      line.path("vars").properties().forEach(e -> add(e.getKey(), e.getValue(), variables));
      return new UnaryLine(
          number,
          line.get("cell").asText(),
          line.get("type").asText(),
          line.get("input"),
          line.get("expected").asBoolean(false),
          variables,
          line.path("disputed").asBoolean());
    } catch (JsonProcessingException unreadable) {
      throw new IllegalStateException("line " + number + " is not JSON", unreadable);
    }
  }

  private static void add(String name, JsonNode value, Map<String, Value> variables) {
    if (value.isObject()) {
      value.properties().forEach(e -> add(name + "." + e.getKey(), e.getValue(), variables));
    } else if (!value.isNull()) {
      variables.put(name, value(value));
    }
  }

  /** The engine's type of the input, when it has one. */
  Optional<ValueType> valueType() {
    return Optional.ofNullable(TYPES.get(type));
  }

  /** The input's value; empty for null. */
  Optional<Value> value() {
    if (input.isNull()) {
      return Optional.empty();
    }
    boolean isDate = type.equals("date");
    return Optional.of(isDate ? Value.of(LocalDate.parse(input.asText())) : value(input));
  }

  private static Value value(JsonNode json) {
    if (json.isNumber()) {
      return Value.of(json.decimalValue());
    }
    if (json.isBoolean()) {
      return Value.of(json.booleanValue());
    }
    String text = json.asText();
    boolean isDate = text.matches("@\"-?\\d{4}-\\d\\d-\\d\\d\"");
    return isDate
        ? Value.of(LocalDate.parse(text.substring(2, text.length() - 1)))
        : Value.of(text);
  }

  /** The line as a test's name. */
  String title() {
    return "line " + number + ": " + cell.strip() + " for " + input + " (" + type + ")";
  }
}
