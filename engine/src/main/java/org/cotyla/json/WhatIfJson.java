package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import org.cotyla.explain.Comparison;
import org.cotyla.explain.DecisionChange;
import org.cotyla.explain.RankingChange;
import org.cotyla.explain.WhatIf;
import org.cotyla.issue.Issue;
import org.cotyla.protocol.Field;

/**
 * Writes a case before and after some findings are supposed otherwise as JSON, laid out as {@code
 * what-if.schema.json} says. The same case and suppositions always give the same text.
 */
public final class WhatIfJson {

  /** The version of the layout; it grows when a reader of the earlier one would go wrong. */
  public static final int FORMAT = 1;

  private WhatIfJson() {}

  /** The comparison as JSON text, indented, with a line end at its end. */
  public static String write(WhatIf whatIf) {
    return TidyJson.of(json -> write(json, whatIf));
  }

  private static void write(JsonGenerator json, WhatIf whatIf) throws IOException {
    Comparison comparison = whatIf.comparison();
    ChangeWriter changes = new ChangeWriter(json, new ValuesJson(json));
    json.writeStartObject();
    HeadJson.start(json, FORMAT, comparison.after());
    HeadJson.engine(json, comparison.after());
    HeadJson.theCase(json, "before", comparison.before());
    HeadJson.theCase(json, "after", comparison.after());
    ScalarJson.strings(json, "supposed", whatIf.changed().stream().map(Field::name).toList());
    changes.findings(comparison.findings());
    json.writeBooleanField("changesAnything", comparison.changesAnything());
    json.writeArrayFieldStart("rankings");
    for (RankingChange ranking : comparison.rankings()) {
      changes.ranking(ranking);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("decisions");
    for (DecisionChange decision : comparison.decisions()) {
      changes.decision(decision);
    }
    json.writeEndArray();
    ScalarJson.strings(
        json, "remarks", comparison.after().remarks().stream().map(Issue::plain).toList());
    json.writeEndObject();
  }
}
