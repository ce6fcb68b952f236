package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import org.cotyla.evaluate.Contribution;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.protocol.Row;

/** Writes a ranking: every option with its points and each row that speaks for or against it. */
final class RankingWriter {

  private final JsonGenerator json;
  private final ValuesJson values;

  RankingWriter(JsonGenerator json, ValuesJson values) {
    this.json = json;
    this.values = values;
  }

  void write(RankingResult result) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", result.ranking().name());
    json.writeFieldName("first");
    values.write(result.first(), result.ranking().first());
    json.writeArrayFieldStart("options");
    for (RankedOption option : result.options()) {
      option(option);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void option(RankedOption option) throws IOException {
    json.writeStartObject();
    json.writeStringField("option", option.name());
    json.writeNumberField("place", option.place());
    json.writeStringField("availability", option.availability().word());
    json.writeBooleanField("canBeFirst", option.canBeFirst());
    json.writeObjectFieldStart("points");
    ScalarJson.number(json, "now", option.points().now());
    ScalarJson.number(json, "least", option.points().least());
    ScalarJson.number(json, "most", option.points().most());
    json.writeEndObject();
    json.writeArrayFieldStart("tiedWith");
    for (String other : option.tiedWith()) {
      json.writeString(other);
    }
    json.writeEndArray();
    json.writeStringField("meaning", option.option().meaning());
    json.writeArrayFieldStart("needs");
    for (String need : option.option().needs()) {
      json.writeString(need);
    }
    json.writeEndArray();
    if (option.option().leadTimeDays().isPresent()) {
      json.writeNumberField("leadTimeDays", option.option().leadTimeDays().getAsInt());
    }
    json.writeArrayFieldStart("contributions");
    for (Contribution contribution : option.contributions()) {
      contribution(contribution);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void contribution(Contribution contribution) throws IOException {
    Row row = contribution.firing().row();
    json.writeStartObject();
    json.writeStringField("decision", contribution.firing().table().name());
    json.writeStringField("row", row.id());
    json.writeStringField("cell", row.at().plain());
    json.writeStringField("effect", contribution.effect().word());
    ScalarJson.number(json, "points", contribution.points());
    json.writeBooleanField("certain", contribution.isCertain());
    json.writeStringField("because", row.because());
    json.writeArrayFieldStart("sources");
    for (String key : row.sources()) {
      json.writeString(key);
    }
    json.writeEndArray();
    json.writeEndObject();
  }
}
