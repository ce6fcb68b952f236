package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Fault;
import org.cotyla.evaluate.MissingDatum;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Datum;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issue;
import org.cotyla.protocol.Calculation;
import org.cotyla.value.PossibleValues;

/** Writes one recommendation, part by part. */
final class RecommendationWriter {

  private final JsonGenerator json;
  private final Recommendation advice;
  private final ValuesJson values;
  private final DecisionWriter decisions;
  private final RankingWriter rankings;

  RecommendationWriter(JsonGenerator json, Recommendation advice) {
    this.json = json;
    this.advice = advice;
    this.values = new ValuesJson(json);
    this.decisions = new DecisionWriter(json, values, advice.protocol());
    this.rankings = new RankingWriter(json, values);
  }

  void write() throws IOException {
    json.writeStartObject();
    HeadJson.start(json, RecommendationJson.FORMAT, advice);
    HeadJson.engine(json, advice);
    theCase();
    json.writeArrayFieldStart("faults");
    for (Fault fault : advice.faults()) {
      fault(fault);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("rankings");
    for (RankingResult ranking : advice.rankings()) {
      rankings.write(ranking);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("decisions");
    for (DecisionResult decision : advice.decisions()) {
      decisions.write(decision);
    }
    json.writeEndArray();
    calculations();
    json.writeArrayFieldStart("missing");
    for (MissingDatum missing : advice.missing()) {
      missing(missing);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("remarks");
    for (Issue remark : advice.remarks()) {
      remark(remark);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void theCase() throws IOException {
    json.writeObjectFieldStart("case");
    json.writeStringField("title", advice.findings().title());
    json.writeStringField("stage", advice.findings().stage());
    json.writeStringField("digest", advice.identity().caseDigest());
    json.writeArrayFieldStart("findings");
    for (Datum datum : advice.findings().data()) {
      json.writeStartObject();
      json.writeStringField("field", datum.field().name());
      json.writeStringField("unit", datum.field().unit());
      json.writeStringField("knowledge", knowledge(datum));
      json.writeFieldName("possible");
      values.write(datum.value(), datum.field().symbol());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  static String knowledge(Datum datum) {
    return switch (datum.knowledge()) {
      case RECORDED -> "recorded";
      case PARTLY -> "partly";
      case MISSING -> "missing";
      case NOT_YET -> "not yet";
    };
  }

  private void fault(Fault fault) throws IOException {
    json.writeStartObject();
    json.writeStringField("code", fault.code());
    json.writeStringField("decision", fault.decision());
    json.writeStringField("message", fault.message());
    ScalarJson.strings(json, "cells", fault.rows().stream().map(CellRef::plain).toList());
    json.writeEndObject();
  }

  private void calculations() throws IOException {
    Map<String, PossibleValues> results = advice.calculations();
    json.writeArrayFieldStart("calculations");
    for (Calculation calculation : advice.protocol().calculations()) {
      PossibleValues result = results.get(calculation.name());
      if (result != null) {
        json.writeStartObject();
        json.writeStringField("name", calculation.name());
        json.writeStringField("unit", calculation.unit());
        json.writeBooleanField("constant", calculation.constant().isPresent());
        json.writeStringField("cell", calculation.at().plain());
        json.writeFieldName("possible");
        values.write(result, calculation.symbol());
        json.writeEndObject();
      }
    }
    json.writeEndArray();
  }

  private void missing(MissingDatum missing) throws IOException {
    json.writeStartObject();
    json.writeStringField("field", missing.datum().field().name());
    json.writeBooleanField("mayMatter", missing.mayMatter());
    ScalarJson.strings(json, "mayChangeFirst", missing.mayChangeFirst());
    ScalarJson.strings(json, "mayChange", missing.mayChange());
    ScalarJson.strings(json, "mayChangePoints", missing.mayChangePoints());
    json.writeEndObject();
  }

  private void remark(Issue remark) throws IOException {
    json.writeStartObject();
    json.writeStringField("code", remark.code());
    json.writeStringField("severity", remark.severity().word());
    json.writeStringField("place", remark.place().plain());
    json.writeStringField("message", remark.message());
    if (remark.help().isPresent()) {
      json.writeStringField("help", remark.help().get());
    }
    json.writeEndObject();
  }
}
