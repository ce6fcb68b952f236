package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import org.cotyla.evaluate.MissingDatum;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explain.Comparison;
import org.cotyla.explain.DecisionChange;
import org.cotyla.explain.RankingChange;
import org.cotyla.explain.Replan;
import org.cotyla.json.RecordedPlan.Origin;
import org.cotyla.protocol.Field;

/** Writes a plan that was run again, part by part. */
final class ReplanWriter {

  private final JsonGenerator json;
  private final Replan replan;
  private final Comparison comparison;
  private final ChangeWriter changes;

  ReplanWriter(JsonGenerator json, Replan replan) {
    this.json = json;
    this.replan = replan;
    this.comparison = replan.comparison();
    this.changes = new ChangeWriter(json, new ValuesJson(json));
  }

  void write(Optional<Origin> origin) throws IOException {
    Recommendation after = comparison.after();
    json.writeStartObject();
    HeadJson.start(json, ReplanJson.FORMAT, after);
    HeadJson.engine(json, after);
    if (origin.isPresent()) {
      origin(origin.get());
    }
    HeadJson.theCase(json, "before", comparison.before());
    HeadJson.theCase(json, "after", after);
    findings();
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
    open();
    json.writeEndObject();
  }

  private void origin(Origin origin) throws IOException {
    json.writeObjectFieldStart("planMadeWith");
    json.writeStringField("identifier", origin.identifier());
    json.writeStringField("version", origin.version());
    json.writeStringField("digest", origin.digest());
    json.writeBooleanField(
        "sameProtocol", origin.digest().equals(comparison.after().protocolDigest()));
    json.writeEndObject();
  }

  private void findings() throws IOException {
    changes.findings(comparison.findings());
    ScalarJson.strings(json, "restated", replan.restated().stream().map(Field::name).toList());
  }

  private void open() throws IOException {
    json.writeArrayFieldStart("stillOpen");
    for (MissingDatum missing : comparison.after().missing()) {
      if (missing.mayMatter()) {
        json.writeStartObject();
        json.writeStringField("field", missing.datum().field().name());
        ScalarJson.strings(json, "mayChangeFirst", missing.mayChangeFirst());
        ScalarJson.strings(json, "mayChange", missing.mayChange());
        ScalarJson.strings(json, "mayChangePoints", missing.mayChangePoints());
        json.writeEndObject();
      }
    }
    json.writeEndArray();
  }
}
