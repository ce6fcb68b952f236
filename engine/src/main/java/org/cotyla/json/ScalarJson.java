package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import org.cotyla.value.Value;
import org.jspecify.annotations.Nullable;

/** Single values, numbers and lists of texts, written the same way in every answer. */
final class ScalarJson {

  private ScalarJson() {}

  /** A number, a yes or no, or a text; {@code null} is written as null. */
  static void value(JsonGenerator json, @Nullable Value value) throws IOException {
    if (value == null) {
      json.writeNull();
    } else if (value instanceof Value.NumberValue) {
      json.writeNumber(value.plain());
    } else if (value instanceof Value.YesNoValue yesNo) {
      json.writeBoolean(yesNo.yes());
    } else {
      json.writeString(value.plain());
    }
  }

  /** A number without an exponent and without zeros at its end. */
  static void number(JsonGenerator json, String name, BigDecimal number) throws IOException {
    json.writeFieldName(name);
    json.writeNumber(Value.of(number).plain());
  }

  static void strings(JsonGenerator json, String name, List<String> texts) throws IOException {
    json.writeArrayFieldStart(name);
    for (String text : texts) {
      json.writeString(text);
    }
    json.writeEndArray();
  }
}
