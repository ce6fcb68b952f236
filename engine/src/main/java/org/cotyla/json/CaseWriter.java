package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.finding.Findings;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;

/** Writes findings as a case that can be read again; what is not recorded is left out. */
final class CaseWriter {

  private final JsonGenerator json;

  CaseWriter(JsonGenerator json) {
    this.json = json;
  }

  void write(Findings findings) throws IOException {
    json.writeStartObject();
    if (!findings.title().isEmpty()) {
      json.writeStringField("title", findings.title());
    }
    json.writeStringField("stage", findings.stage());
    json.writeObjectFieldStart("findings");
    for (Datum datum : findings.data()) {
      boolean stated =
          datum.knowledge() == Knowledge.RECORDED || datum.knowledge() == Knowledge.PARTLY;
      if (stated && isWritable(datum.value().values())) {
        json.writeFieldName(datum.field().name());
        values(datum.value().values());
      }
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  /** A case has no way to say more than one range of numbers, or a range without an end. */
  private static boolean isWritable(ValueSet values) {
    return values.isFinite()
        || (values.parts().size() == 1
            && values.hull().low() instanceof Value.NumberValue
            && values.hull().high() instanceof Value.NumberValue);
  }

  private void values(ValueSet values) throws IOException {
    List<Interval> parts = values.parts();
    if (values.isFinite() && parts.size() == 1) {
      ScalarJson.value(json, parts.get(0).low());
    } else if (values.isFinite()) {
      json.writeStartObject();
      json.writeArrayFieldStart("one of");
      for (Value value : values.values()) {
        ScalarJson.value(json, value);
      }
      json.writeEndArray();
      json.writeEndObject();
    } else {
      json.writeStartObject();
      json.writeFieldName("low");
      ScalarJson.value(json, parts.get(0).low());
      json.writeFieldName("high");
      ScalarJson.value(json, parts.get(0).high());
      json.writeEndObject();
    }
  }
}
