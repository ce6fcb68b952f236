package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.protocol.About;

/** The caution and what an answer can be traced back to, as several answers start with them. */
final class HeadJson {

  private HeadJson() {}

  static void write(JsonGenerator json, int format, Recommendation advice) throws IOException {
    About about = advice.protocol().about();
    json.writeNumberField("format", format);
    json.writeStringField("caution", advice.caution());
    json.writeObjectFieldStart("protocol");
    json.writeStringField("identifier", about.identifier());
    json.writeStringField("title", about.title());
    json.writeStringField("version", about.version());
    json.writeStringField("status", about.status().word());
    json.writeStringField("digest", advice.protocolDigest());
    json.writeEndObject();
    json.writeStringField("engineVersion", advice.identity().engineVersion());
    json.writeObjectFieldStart("case");
    json.writeStringField("title", advice.findings().title());
    json.writeStringField("stage", advice.findings().stage());
    json.writeStringField("digest", advice.identity().caseDigest());
    json.writeNumberField("faults", advice.faults().size());
    json.writeEndObject();
  }

  static void strings(JsonGenerator json, String name, List<String> texts) throws IOException {
    json.writeArrayFieldStart(name);
    for (String text : texts) {
      json.writeString(text);
    }
    json.writeEndArray();
  }
}
