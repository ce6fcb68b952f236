package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.cotyla.compare.Condition;
import org.cotyla.compare.DecisionComparison;
import org.cotyla.compare.Edit;
import org.cotyla.compare.Impact;
import org.cotyla.compare.ProtocolComparison;
import org.cotyla.compare.RankingComparison;
import org.cotyla.compare.RankingComparison.FirstChange;
import org.cotyla.compare.Region;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.finding.Findings;
import org.cotyla.identity.EngineVersion;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issue;
import org.cotyla.protocol.About;
import org.cotyla.protocol.Protocol;
import org.cotyla.value.Value;

/** Writes a comparison of two protocols, part by part. */
final class ComparisonWriter {

  private final JsonGenerator json;

  ComparisonWriter(JsonGenerator json) {
    this.json = json;
  }

  void write(ProtocolComparison comparison, Optional<Impact> impact) throws IOException {
    json.writeStartObject();
    json.writeNumberField("format", ComparisonJson.FORMAT);
    json.writeStringField("caution", comparison.after().about().caution());
    json.writeStringField("engineVersion", EngineVersion.current());
    protocol("old", comparison.before(), comparison.digestBefore());
    protocol("new", comparison.after(), comparison.digestAfter());
    json.writeStringField("meaning", comparison.meaning().words());
    json.writeArrayFieldStart("edits");
    for (Edit edit : comparison.edits()) {
      edit(edit);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("decisions");
    for (DecisionComparison decision : comparison.decisions()) {
      decision(decision);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("rankings");
    for (RankingComparison ranking : comparison.rankings()) {
      ranking(ranking);
    }
    json.writeEndArray();
    strings("contradictions", comparison.contradictions());
    json.writeArrayFieldStart("rowIds");
    for (Issue issue : comparison.rowIds()) {
      rowId(issue);
    }
    json.writeEndArray();
    if (impact.isPresent()) {
      new ImpactWriter(json).write(impact.get());
    }
    json.writeEndObject();
  }

  private void protocol(String name, Protocol protocol, String digest) throws IOException {
    About about = protocol.about();
    json.writeObjectFieldStart(name);
    json.writeStringField("identifier", about.identifier());
    json.writeStringField("title", about.title());
    json.writeStringField("version", about.version());
    json.writeStringField("status", about.status().word());
    json.writeStringField("digest", digest);
    json.writeEndObject();
  }

  private void edit(Edit edit) throws IOException {
    json.writeStartObject();
    json.writeStringField("kind", edit.kind().word());
    json.writeStringField("subject", edit.subject());
    json.writeStringField("part", edit.part());
    json.writeStringField("was", edit.was());
    json.writeStringField("now", edit.now());
    cell("cellBefore", edit.before());
    cell("cellAfter", edit.after());
    json.writeEndObject();
  }

  private void rowId(Issue issue) throws IOException {
    json.writeStartObject();
    json.writeStringField("code", issue.code());
    json.writeStringField("place", issue.place().plain());
    json.writeStringField("message", issue.message());
    if (issue.help().isPresent()) {
      json.writeStringField("help", issue.help().get());
    }
    json.writeEndObject();
  }

  private void cell(String name, Optional<CellRef> cell) throws IOException {
    if (cell.isPresent()) {
      json.writeStringField(name, cell.get().plain());
    }
  }

  private void decision(DecisionComparison decision) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", decision.name());
    json.writeStringField("verdict", decision.verdict().word());
    json.writeBooleanField("edited", decision.edited());
    strings("followsFrom", decision.followsFrom());
    json.writeArrayFieldStart("regions");
    for (Region region : decision.regions()) {
      region(region);
    }
    json.writeEndArray();
    json.writeBooleanField("more", decision.more());
    if (decision.example().isPresent()) {
      json.writeFieldName("example");
      example(decision.example().get().findings());
    }
    if (decision.note().isPresent()) {
      json.writeStringField("note", decision.note().get());
    }
    json.writeEndObject();
  }

  private void region(Region region) throws IOException {
    json.writeStartObject();
    json.writeStringField("sentence", region.sentence());
    json.writeArrayFieldStart("conditions");
    for (Condition condition : region.conditions()) {
      json.writeStartObject();
      json.writeStringField("name", condition.name());
      json.writeStringField("words", condition.words());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeBooleanField("provenForAll", region.whole());
    json.writeStringField("difference", region.difference().kind().word());
    json.writeStringField("about", region.difference().about());
    if (region.difference().was().isPresent()) {
      json.writeStringField("was", region.difference().was().get());
    }
    if (region.difference().now().isPresent()) {
      json.writeStringField("now", region.difference().now().get());
    }
    json.writeFieldName("example");
    example(region.example().findings());
    json.writeEndObject();
  }

  private void ranking(RankingComparison ranking) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", ranking.name());
    json.writeStringField("verdict", ranking.verdict().word());
    json.writeStringField("first", ranking.first().word());
    json.writeArrayFieldStart("changes");
    for (FirstChange change : ranking.changes()) {
      json.writeStartObject();
      json.writeStringField("was", change.was());
      json.writeStringField("now", change.now());
      json.writeFieldName("example");
      example(change.example().findings());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeBooleanField("more", ranking.more());
    if (ranking.note().isPresent()) {
      json.writeStringField("note", ranking.note().get());
    }
    json.writeEndObject();
  }

  /** A case as case files state it, so that it can be run. */
  private void example(Findings findings) throws IOException {
    json.writeStartObject();
    json.writeStringField("stage", findings.stage());
    json.writeObjectFieldStart("findings");
    for (Datum datum : findings.data()) {
      Optional<Value> value = datum.value().single();
      if (datum.knowledge() == Knowledge.RECORDED && value.isPresent()) {
        json.writeFieldName(datum.field().name());
        value(value.get());
      }
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  private void value(Value value) throws IOException {
    if (value instanceof Value.NumberValue) {
      json.writeNumber(value.plain());
    } else if (value instanceof Value.YesNoValue answer) {
      json.writeBoolean(answer.yes());
    } else {
      json.writeString(value.plain());
    }
  }

  private void strings(String name, List<String> texts) throws IOException {
    json.writeArrayFieldStart(name);
    for (String text : texts) {
      json.writeString(text);
    }
    json.writeEndArray();
  }
}
