package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.explain.DecisionChange;
import org.cotyla.explain.DecisionChange.OutputChange;
import org.cotyla.explain.FindingChange;
import org.cotyla.explain.OptionChange;
import org.cotyla.explain.RankingChange;
import org.cotyla.explain.RowChange;
import org.cotyla.explain.RowChange.Part;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Vote;
import org.cotyla.value.Value;

/** Writes what differs in decisions and rankings, with the rows that make the difference. */
final class ChangeWriter {

  private final JsonGenerator json;
  private final ValuesJson values;

  ChangeWriter(JsonGenerator json, ValuesJson values) {
    this.json = json;
    this.values = values;
  }

  /** The findings that are known differently. */
  void findings(List<FindingChange> findings) throws IOException {
    json.writeArrayFieldStart("findings");
    for (FindingChange change : findings) {
      Field field = change.field();
      json.writeStartObject();
      json.writeStringField("field", field.name());
      json.writeStringField("unit", field.unit());
      json.writeStringField("change", change.kind().word());
      json.writeFieldName("before");
      values.write(change.before().value(), field.symbol());
      json.writeFieldName("after");
      values.write(change.after().value(), field.symbol());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  void decision(DecisionChange change) throws IOException {
    DecisionTable table = change.table();
    json.writeStartObject();
    json.writeStringField("name", table.name());
    json.writeStringField("shownAs", table.shownAs().word());
    json.writeStringField("cell", table.at().plain());
    json.writeBooleanField("changesResult", change.changesResult());
    json.writeBooleanField("certainBefore", change.before().isCertain());
    json.writeBooleanField("certainAfter", change.after().isCertain());
    json.writeArrayFieldStart("outputs");
    for (OutputChange output : change.outputs()) {
      json.writeStartObject();
      json.writeStringField("name", output.output().name());
      json.writeFieldName("before");
      values.write(output.before(), output.output());
      json.writeFieldName("after");
      values.write(output.after(), output.output());
      json.writeEndObject();
    }
    json.writeEndArray();
    if (change.isList()) {
      ids("newEntries", change.newEntries());
      ids("goneEntries", change.goneEntries());
    }
    rows(change.rows(), table.outputs());
    json.writeEndObject();
  }

  private void ids(String name, List<RowChange> rows) throws IOException {
    json.writeArrayFieldStart(name);
    for (RowChange change : rows) {
      json.writeString(change.row().id());
    }
    json.writeEndArray();
  }

  void ranking(RankingChange change) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", change.name());
    json.writeBooleanField("changesLeader", change.changesLeader());
    first("before", change.before());
    first("after", change.after());
    json.writeArrayFieldStart("options");
    for (OptionChange option : change.options()) {
      json.writeStartObject();
      json.writeStringField("option", option.name());
      json.writeBooleanField("newlyRuledOut", option.isNewlyRuledOut());
      json.writeBooleanField("noLongerRuledOut", option.isNoLongerRuledOut());
      option("before", option.before());
      option("after", option.after());
      rows(option.rows(), List.of());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void first(String name, RankingResult result) throws IOException {
    json.writeObjectFieldStart(name);
    Optional<RankedOption> leader = result.leader();
    if (leader.isPresent()) {
      json.writeStringField("leader", leader.get().name());
    }
    json.writeFieldName("first");
    values.write(result.first(), result.ranking().first());
    json.writeEndObject();
  }

  private void option(String name, RankedOption option) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeNumberField("place", option.place());
    json.writeStringField("availability", option.availability().word());
    json.writeBooleanField("canBeFirst", option.canBeFirst());
    json.writeFieldName("points");
    json.writeNumber(Value.of(option.points().now()).plain());
    json.writeEndObject();
  }

  private void rows(List<RowChange> rows, List<DecisionTable.Output> outputs) throws IOException {
    json.writeArrayFieldStart("rows");
    for (RowChange change : rows) {
      json.writeStartObject();
      json.writeStringField("row", change.row().id());
      json.writeStringField("cell", change.row().at().plain());
      json.writeStringField("change", change.kind().word());
      if (change.row().vote().isPresent()) {
        vote(change.row().vote().get());
      }
      part("before", change.before(), outputs);
      part("after", change.after(), outputs);
      json.writeStringField("because", change.row().because());
      json.writeArrayFieldStart("sources");
      for (String key : change.row().sources()) {
        json.writeString(key);
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void vote(Vote vote) throws IOException {
    json.writeStringField("effect", vote.effect().word());
    json.writeFieldName("points");
    json.writeNumber(Value.of(vote.points()).plain());
  }

  private void part(String name, Optional<Part> part, List<DecisionTable.Output> outputs)
      throws IOException {
    if (part.isEmpty()) {
      return;
    }
    json.writeObjectFieldStart(name);
    json.writeStringField("standing", part.get().standing().word());
    json.writeArrayFieldStart("results");
    for (int i = 0; i < Math.min(outputs.size(), part.get().results().size()); i++) {
      json.writeStartObject();
      json.writeStringField("name", outputs.get(i).symbol().name());
      json.writeFieldName("possible");
      values.write(part.get().results().get(i), outputs.get(i).symbol());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }
}
