package org.cotyla.identity;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.finding.Findings;

/** The digest of a case: its stage and what is known of each field, in the field's unit. */
public final class CaseDigest {

  private CaseDigest() {}

  /**
   * The same for two cases that state the same, however names and units were spelt; without the
   * title.
   */
  public static String of(Findings findings) {
    return CanonicalJson.digest(json(findings));
  }

  /** What the digest is taken over: the case as canonical JSON (RFC 8785), every value as text. */
  public static String canonical(Findings findings) {
    return CanonicalJson.of(json(findings).toString());
  }

  private static ObjectNode json(Findings findings) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("stage", findings.stage());
    ObjectNode data = json.putObject("findings");
    for (Datum datum : findings.data()) {
      if (datum.knowledge() == Knowledge.RECORDED || datum.knowledge() == Knowledge.PARTLY) {
        ArrayNode parts = data.putArray(datum.field().name());
        datum.value().values().parts().forEach(part -> parts.add(part.plain()));
      }
    }
    return json;
  }
}
