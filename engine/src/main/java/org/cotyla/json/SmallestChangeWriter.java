package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.cotyla.explore.ChangeSet;
import org.cotyla.explore.Goal;
import org.cotyla.explore.Move;
import org.cotyla.explore.SmallestChange;
import org.cotyla.protocol.Field;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/** Writes smallest changes, part by part. */
final class SmallestChangeWriter {

  private final JsonGenerator json;
  private final ValuesJson values;

  SmallestChangeWriter(JsonGenerator json) {
    this.json = json;
    this.values = new ValuesJson(json);
  }

  void write(SmallestChange change) throws IOException {
    json.writeStartObject();
    HeadJson.write(json, SmallestChangeJson.FORMAT, change.advice());
    json.writeObjectFieldStart("wanted");
    json.writeStringField("kind", change.goal() instanceof Goal.First ? "first" : "decision");
    json.writeStringField("name", change.goal().about());
    json.writeStringField("is", change.goal().wanted());
    json.writeEndObject();
    json.writeBooleanField("reachedAlready", change.isReached());
    ways(change);
    json.writeEndObject();
  }

  /** The bound, how far the list goes, and each way, in an object that is open. */
  void ways(SmallestChange change) throws IOException {
    json.writeNumberField("findingsAtMost", change.atMost());
    json.writeStringField("end", change.end().name().toLowerCase(Locale.ROOT));
    json.writeArrayFieldStart("ways");
    for (ChangeSet way : change.sets()) {
      json.writeStartObject();
      moves("different", way.moves(), true);
      moves("onceRecorded", way.onceRecorded(), false);
      json.writeStringField("caseDigest", way.after().identity().caseDigest());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void moves(String name, List<Move> moves, boolean nearest) throws IOException {
    json.writeArrayFieldStart(name);
    for (Move move : moves) {
      Field field = move.before().field();
      json.writeStartObject();
      json.writeStringField("field", field.name());
      json.writeStringField("unit", field.unit());
      json.writeFieldName("before");
      values.write(move.before().value(), field.symbol());
      json.writeFieldName("to");
      values.write(PossibleValues.of(move.to()), field.symbol());
      if (move.line().isPresent()) {
        json.writeFieldName("beyondLine");
        values.write(PossibleValues.of(move.line().get()), field.symbol());
      }
      if (nearest) {
        json.writeBooleanField("provenNearest", move.provenNearest());
      }
      json.writeArrayFieldStart("orElse");
      for (Value other : move.others()) {
        values.write(PossibleValues.of(other), field.symbol());
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
