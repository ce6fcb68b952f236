package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.cotyla.compare.Impact;
import org.cotyla.compare.Impact.Group;
import org.cotyla.compare.Impact.SetAside;
import org.cotyla.compare.Shift;
import org.cotyla.issue.Issue;

/** Writes what a protocol changes for past cases. */
final class ImpactWriter {

  private final JsonGenerator json;

  ImpactWriter(JsonGenerator json) {
    this.json = json;
  }

  void write(Impact impact) throws IOException {
    json.writeObjectFieldStart("pastCases");
    json.writeNumberField("run", impact.cases());
    json.writeNumberField("changed", impact.changed());
    json.writeArrayFieldStart("shifts");
    for (Group group : impact.groups()) {
      shift(group.shift(), group.references());
    }
    json.writeEndArray();
    json.writeArrayFieldStart("setAside");
    for (SetAside one : impact.setAside()) {
      setAside(one);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void shift(Shift shift, List<String> references) throws IOException {
    json.writeStartObject();
    json.writeStringField("kind", shift.kind().word());
    json.writeStringField("about", shift.about());
    json.writeStringField("was", shift.was());
    json.writeStringField("now", shift.now());
    strings("oldRows", shift.oldRows());
    strings("newRows", shift.newRows());
    strings("cases", references);
    json.writeEndObject();
  }

  private void setAside(SetAside one) throws IOException {
    json.writeStartObject();
    json.writeStringField("case", one.reference());
    json.writeStringField("refusedBy", one.refusedBy());
    json.writeArrayFieldStart("faults");
    for (Issue fault : one.faults()) {
      json.writeStartObject();
      json.writeStringField("code", fault.code());
      json.writeStringField("place", fault.place().plain());
      json.writeStringField("message", fault.message());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void strings(String name, List<String> texts) throws IOException {
    json.writeArrayFieldStart(name);
    for (String text : texts) {
      json.writeString(text);
    }
    json.writeEndArray();
  }
}
