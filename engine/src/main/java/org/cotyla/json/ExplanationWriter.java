package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explain.Premise;
import org.cotyla.explain.Reason;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;

/** Writes what all explanations share: options, rows and what they rest on. */
final class ExplanationWriter {

  private final JsonGenerator json;
  private final DecisionWriter rows;
  private final ValuesJson values;

  ExplanationWriter(JsonGenerator json, Recommendation advice) {
    this.json = json;
    this.values = new ValuesJson(json);
    this.rows = new DecisionWriter(json, values, advice.protocol());
  }

  void option(String name, RankedOption option) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeStringField("option", option.name());
    json.writeNumberField("place", option.place());
    json.writeStringField("availability", option.availability().word());
    json.writeBooleanField("canBeFirst", option.canBeFirst());
    json.writeObjectFieldStart("points");
    ScalarJson.number(json, "now", option.points().now());
    ScalarJson.number(json, "least", option.points().least());
    ScalarJson.number(json, "most", option.points().most());
    json.writeEndObject();
    ScalarJson.strings(json, "tiedWith", option.tiedWith());
    json.writeEndObject();
  }

  void reasons(String name, List<Reason> reasons) throws IOException {
    json.writeArrayFieldStart(name);
    for (Reason reason : reasons) {
      json.writeStartObject();
      reason(reason);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** A row's effect and the row itself, in an object that is open. */
  void reason(Reason reason) throws IOException {
    json.writeStringField("effect", reason.effect().word());
    ScalarJson.number(json, "points", reason.points());
    json.writeBooleanField("certain", reason.isCertain());
    json.writeFieldName("row");
    rows.firing(reason.contribution().firing());
  }

  void premises(List<Premise> premises) throws IOException {
    json.writeArrayFieldStart("premises");
    for (Premise premise : premises) {
      json.writeStartObject();
      premise(premise);
      ScalarJson.strings(json, "names", names(premise.names()));
      ScalarJson.strings(json, "restsOn", names(premise.restsOn()));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void premise(Premise premise) throws IOException {
    if (premise instanceof Premise.Recorded recorded) {
      json.writeStringField("kind", "finding");
      json.writeStringField("unit", recorded.datum().field().unit());
      json.writeStringField("knowledge", RecommendationWriter.knowledge(recorded.datum()));
      possible(recorded.datum().value(), recorded.datum().field().symbol());
    } else if (premise instanceof Premise.Calculated calculated) {
      boolean constant = calculated.calculation().constant().isPresent();
      json.writeStringField("kind", constant ? "constant" : "calculation");
      json.writeStringField("unit", calculated.calculation().unit());
      json.writeStringField("cell", calculated.calculation().expressionAt().plain());
      json.writeStringField("expression", calculated.calculation().expression().print());
      possible(calculated.value(), calculated.calculation().symbol());
    } else if (premise instanceof Premise.Decided decided) {
      decided(decided);
    } else if (premise instanceof Premise.Ranked ranked) {
      json.writeStringField("kind", "ranking");
      json.writeStringField("ranking", ranked.result().ranking().name());
      possible(ranked.result().first(), ranked.result().ranking().first());
    }
  }

  private void decided(Premise.Decided decided) throws IOException {
    json.writeStringField("kind", "decision");
    json.writeStringField("decision", decided.result().table().name());
    json.writeStringField("hitPolicy", decided.result().table().hitPolicy().letters());
    json.writeArrayFieldStart("outputs");
    for (Symbol output : decided.names()) {
      json.writeStartObject();
      json.writeStringField("name", output.name());
      possible(decided.value(output), output);
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeBooleanField("noRowMatches", decided.result().byDefault());
    json.writeBooleanField("maybeNoRowMatches", decided.result().mayBeByDefault());
    json.writeArrayFieldStart("rows");
    for (Firing firing : decided.rows()) {
      rows.firing(firing);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("defaultRows");
    for (Row row : decided.defaultRows()) {
      rows.row(row);
    }
    json.writeEndArray();
  }

  private static List<String> names(List<Symbol> symbols) {
    return symbols.stream().map(Symbol::name).toList();
  }

  void possible(PossibleValues possible, Symbol symbol) throws IOException {
    json.writeFieldName("possible");
    values.write(possible, symbol);
  }
}
