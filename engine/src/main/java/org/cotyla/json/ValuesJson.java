package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import org.cotyla.expression.Symbol;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;

/** Writes what a datum can be: one value, a list of values, or intervals; and whether nothing. */
final class ValuesJson {

  private final JsonGenerator json;

  ValuesJson(JsonGenerator json) {
    this.json = json;
  }

  /** An object; a choice's values stand in the order of the protocol. */
  void write(PossibleValues possible, Symbol symbol) throws IOException {
    json.writeStartObject();
    json.writeBooleanField("certain", possible.isCertain());
    if (possible.isCertain()) {
      json.writeFieldName("value");
      ScalarJson.value(json, possible.single().orElse(null));
    } else {
      ValueSet values = possible.values();
      if (values.isFinite()) {
        json.writeArrayFieldStart("oneOf");
        for (Value value : values.values().stream().sorted(orderOf(symbol)).toList()) {
          ScalarJson.value(json, value);
        }
      } else {
        json.writeArrayFieldStart("intervals");
        for (Interval interval : values.parts()) {
          interval(interval);
        }
      }
      json.writeEndArray();
      json.writeBooleanField("orNothing", possible.orNothing());
    }
    json.writeEndObject();
  }

  private static Comparator<Value> orderOf(Symbol symbol) {
    List<String> choices = symbol.choices();
    return Comparator.<Value>comparingInt(value -> choices.indexOf(value.plain()))
        .thenComparing(Comparator.naturalOrder());
  }

  private void interval(Interval interval) throws IOException {
    json.writeStartObject();
    json.writeFieldName("low");
    ScalarJson.value(json, interval.low());
    json.writeBooleanField("lowIncluded", interval.lowIncluded());
    json.writeFieldName("high");
    ScalarJson.value(json, interval.high());
    json.writeBooleanField("highIncluded", interval.highIncluded());
    json.writeEndObject();
  }
}
