package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Source;
import org.cotyla.protocol.Vote;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/** Writes what a decision came to, with every row that fired. */
final class DecisionWriter {

  private final JsonGenerator json;
  private final ValuesJson values;
  private final Protocol protocol;

  DecisionWriter(JsonGenerator json, ValuesJson values, Protocol protocol) {
    this.json = json;
    this.values = values;
    this.protocol = protocol;
  }

  void write(DecisionResult result) throws IOException {
    DecisionTable table = result.table();
    json.writeStartObject();
    json.writeStringField("name", table.name());
    json.writeStringField("asks", table.asks());
    json.writeStringField("hitPolicy", table.hitPolicy().letters());
    json.writeStringField("shownAs", table.shownAs().word());
    if (table.ranking().isPresent()) {
      json.writeStringField("ranks", table.ranking().get());
    }
    json.writeStringField("cell", table.at().plain());
    json.writeBooleanField("certain", result.isCertain());
    outputs(result);
    json.writeBooleanField("noRowMatches", result.byDefault());
    json.writeBooleanField("maybeNoRowMatches", result.mayBeByDefault());
    if (result.mayBeByDefault() && table.otherwise().isPresent()) {
      json.writeFieldName("defaultRow");
      row(table.otherwise().get());
    }
    json.writeArrayFieldStart("firings");
    for (Firing firing : result.firings()) {
      firing(firing);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void outputs(DecisionResult result) throws IOException {
    json.writeArrayFieldStart("outputs");
    for (DecisionTable.Output output : result.table().outputs()) {
      PossibleValues possible = result.outputs().get(output.symbol().name());
      if (possible != null) {
        named(output, possible);
      }
    }
    json.writeEndArray();
  }

  private void named(DecisionTable.Output output, PossibleValues possible) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", output.symbol().name());
    json.writeFieldName("possible");
    values.write(possible, output.symbol());
    json.writeEndObject();
  }

  void firing(Firing firing) throws IOException {
    json.writeStartObject();
    json.writeStringField("decision", firing.table().name());
    json.writeStringField("row", firing.row().id());
    json.writeStringField("cell", firing.row().at().plain());
    json.writeBooleanField("certain", firing.certain());
    json.writeStringField("standing", firing.standing().word());
    tests(firing);
    json.writeArrayFieldStart("results");
    List<DecisionTable.Output> outputs = firing.table().outputs();
    for (int i = 0; i < outputs.size(); i++) {
      named(outputs.get(i), firing.results().get(i));
    }
    json.writeEndArray();
    if (firing.row().vote().isPresent()) {
      vote(firing.row().vote().get());
    }
    because(firing.row());
    json.writeEndObject();
  }

  private void tests(Firing firing) throws IOException {
    json.writeArrayFieldStart("tests");
    List<Row.Test> tests = firing.row().tests();
    for (int i = 0; i < tests.size(); i++) {
      Row.Test test = tests.get(i);
      if (!test.prepared().isAnything()) {
        DecisionTable.Input input = firing.table().inputs().get(i);
        json.writeStartObject();
        json.writeStringField("input", input.symbol().name());
        json.writeStringField("test", test.text());
        json.writeStringField("cell", test.at().plain());
        json.writeFieldName("possible");
        values.write(firing.seen().get(i), input.symbol());
        json.writeStringField("holds", firing.truths().get(i).name().toLowerCase(Locale.ROOT));
        json.writeEndObject();
      }
    }
    json.writeEndArray();
  }

  private void vote(Vote vote) throws IOException {
    json.writeObjectFieldStart("vote");
    json.writeStringField("option", vote.option());
    json.writeStringField("effect", vote.effect().word());
    json.writeFieldName("points");
    json.writeNumber(Value.of(vote.points()).plain());
    json.writeEndObject();
  }

  void row(Row row) throws IOException {
    json.writeStartObject();
    json.writeStringField("row", row.id());
    json.writeStringField("cell", row.at().plain());
    because(row);
    json.writeEndObject();
  }

  private void because(Row row) throws IOException {
    json.writeStringField("because", row.because());
    json.writeArrayFieldStart("sources");
    for (String key : row.sources()) {
      Optional<Source> source = protocol.source(key);
      if (source.isPresent()) {
        source(source.get());
      }
    }
    json.writeEndArray();
  }

  private void source(Source source) throws IOException {
    json.writeStartObject();
    json.writeStringField("key", source.key());
    json.writeStringField("citation", source.citation());
    json.writeStringField("year", source.year());
    json.writeStringField("certainty", source.certainty().word());
    json.writeEndObject();
  }
}
