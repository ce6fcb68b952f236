package org.cotyla.ledger;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import org.cotyla.json.TidyJson;

/** What verifying a ledger came to, as JSON laid out as {@code verification.schema.json} says. */
public final class VerificationJson {

  /** The version of the layout; it grows when a reader of the earlier one would go wrong. */
  public static final int FORMAT = 1;

  private VerificationJson() {}

  /**
   * The JSON text, indented, with a line end at its end.
   *
   * @param withCheckpoint whether it was held against a checkpoint that was kept elsewhere
   */
  public static String write(Verification verification, boolean withCheckpoint) {
    return TidyJson.of(json -> write(json, verification, withCheckpoint));
  }

  private static void write(JsonGenerator json, Verification found, boolean withCheckpoint)
      throws IOException {
    json.writeStartObject();
    json.writeNumberField("format", FORMAT);
    json.writeBooleanField("holds", found.holds());
    json.writeBooleanField("checkpointGiven", withCheckpoint);
    json.writeNumberField("entries", found.entries());
    json.writeNumberField("recommendations", found.recommendations());
    json.writeNumberField("signatures", found.signatures());
    json.writeNumberField("otherEngines", found.otherEngines());
    json.writeStringField("lastDigest", found.head());
    json.writeArrayFieldStart("breaches");
    for (Breach breach : found.breaches()) {
      json.writeStartObject();
      json.writeNumberField("entry", breach.sequence());
      json.writeStringField("how", breach.how().word());
      json.writeStringField("what", breach.what());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("remarks");
    for (String remark : found.remarks()) {
      json.writeString(remark);
    }
    json.writeEndArray();
    json.writeEndObject();
  }
}
