package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explore.Condition;
import org.cotyla.explore.Conditions;
import org.cotyla.explore.Facet;
import org.cotyla.explore.Influence;
import org.cotyla.explore.Margin;
import org.cotyla.explore.Margins;
import org.cotyla.explore.Reach;
import org.cotyla.explore.WhatMatters;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.protocol.Field;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/** Writes what an answer hangs on, part by part. */
final class WhatMattersWriter {

  private final JsonGenerator json;
  private final Conditions conditions;
  private final ValuesJson values;

  WhatMattersWriter(JsonGenerator json, Conditions conditions) {
    this.json = json;
    this.conditions = conditions;
    this.values = new ValuesJson(json);
  }

  void write(WhatMatters matters, Margins margins) throws IOException {
    json.writeStartObject();
    HeadJson.write(json, WhatMattersJson.FORMAT, matters.advice());
    json.writeArrayFieldStart("missing");
    for (Influence influence : matters.data()) {
      influence(influence);
    }
    json.writeEndArray();
    json.writeBooleanField("allConditionsLookedFor", conditions.complete());
    json.writeArrayFieldStart("numbers");
    for (Margin margin : margins.margins()) {
      margin(margin);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void influence(Influence influence) throws IOException {
    Datum datum = influence.datum();
    json.writeStartObject();
    json.writeStringField("field", datum.field().name());
    json.writeStringField(
        "knowledge", datum.knowledge() == Knowledge.PARTLY ? "partly" : "missing");
    json.writeBooleanField("provenToChangeNothing", influence.cannotMatter());
    json.writeArrayFieldStart("parts");
    for (Reach reach : influence.reaches()) {
      json.writeStartObject();
      facet(reach.facet());
      json.writeStringField("verdict", word(reach.verdict()));
      ScalarJson.strings(json, "among", reach.among());
      json.writeBooleanField("provenAmongNoOther", reach.whole());
      if (reach.witness().isPresent()) {
        Reach.Witness witness = reach.witness().get();
        json.writeBooleanField("byItself", reach.byItself());
        json.writeArrayFieldStart("witness");
        theCase(witness.one(), witness.oneResult(), reach.facet());
        theCase(witness.other(), witness.otherResult(), reach.facet());
        json.writeEndArray();
      }
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("onlyWhile");
    for (Condition condition : conditions.of(datum)) {
      json.writeStartObject();
      facet(condition.facet());
      json.writeStringField("field", condition.other().name());
      json.writeFieldName("is");
      values.write(PossibleValues.of(condition.when()), condition.other().symbol());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private void facet(Facet facet) throws IOException {
    json.writeStringField("kind", word(facet.kind()));
    json.writeStringField("name", facet.name());
  }

  /** What is shown as a whole has no short words. */
  private void theCase(Recommendation answer, String result, Facet facet) throws IOException {
    json.writeStartObject();
    if (facet.kind() != Facet.Kind.SHOWN) {
      json.writeStringField("result", result);
    }
    json.writeArrayFieldStart("findings");
    for (Datum datum : answer.findings().data()) {
      if (datum.knowledge() == Knowledge.RECORDED) {
        json.writeStartObject();
        json.writeStringField("field", datum.field().name());
        json.writeFieldName("is");
        values.write(datum.value(), datum.field().symbol());
        json.writeEndObject();
      }
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void margin(Margin margin) throws IOException {
    Field field = margin.datum().field();
    json.writeStartObject();
    json.writeStringField("field", field.name());
    json.writeStringField("unit", field.unit());
    json.writeFieldName("is");
    values.write(margin.datum().value(), field.symbol());
    line("below", margin.below(), field);
    line("above", margin.above(), field);
    json.writeBooleanField("provenNearest", margin.nearest());
    if (margin.error().isPresent()) {
      Margin.Error error = margin.error().get();
      json.writeObjectFieldStart("measurementError");
      json.writeNumberField("size", error.size());
      json.writeStringField("verdict", word(error.verdict()));
      json.writeArrayFieldStart("canChange");
      for (Facet facet : error.changes()) {
        json.writeStartObject();
        facet(facet);
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndObject();
  }

  private void line(String name, Optional<Margin.Line> line, Field field) throws IOException {
    if (line.isEmpty()) {
      return;
    }
    json.writeObjectFieldStart(name);
    number("line", line.get().at(), field);
    json.writeBooleanField("beyond", line.get().beyond());
    number("value", line.get().value(), field);
    json.writeArrayFieldStart("changes");
    for (Margin.Change change : line.get().changes()) {
      json.writeStartObject();
      facet(change.facet());
      json.writeStringField("from", change.from());
      json.writeStringField("to", change.to());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void number(String name, Value value, Field field) throws IOException {
    json.writeFieldName(name);
    values.write(PossibleValues.of(value), field.symbol());
  }
}
