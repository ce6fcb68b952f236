package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.protocol.About;

/** The caution and what an answer can be traced back to, as several answers start with them. */
final class HeadJson {

  private HeadJson() {}

  /** The head and the case of an answer about one case. */
  static void write(JsonGenerator json, int format, Recommendation advice) throws IOException {
    start(json, format, advice);
    engine(json, advice);
    theCase(json, "case", advice);
  }

  /** The format, the caution and the protocol. */
  static void start(JsonGenerator json, int format, Recommendation advice) throws IOException {
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
  }

  static void engine(JsonGenerator json, Recommendation advice) throws IOException {
    json.writeStringField("engineVersion", advice.identity().engineVersion());
  }

  /** Which case it was and how often the protocol contradicts itself on it. */
  static void theCase(JsonGenerator json, String name, Recommendation advice) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeStringField("title", advice.findings().title());
    json.writeStringField("stage", advice.findings().stage());
    json.writeStringField("digest", advice.identity().caseDigest());
    json.writeNumberField("faults", advice.faults().size());
    json.writeEndObject();
  }
}
