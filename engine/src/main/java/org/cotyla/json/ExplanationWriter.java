package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explain.Premise;
import org.cotyla.explain.Reason;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.About;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/** Writes what all explanations share: whose answer it is, options, rows and what they rest on. */
final class ExplanationWriter {

  private final JsonGenerator json;
  private final Recommendation advice;
  private final DecisionWriter rows;
  private final ValuesJson values;

  ExplanationWriter(JsonGenerator json, Recommendation advice) {
    this.json = json;
    this.advice = advice;
    this.values = new ValuesJson(json);
    this.rows = new DecisionWriter(json, values, advice.protocol());
  }

  /** The format, the caution, the protocol and the engine, in an object that stays open. */
  void head(int format) throws IOException {
    About about = advice.protocol().about();
    json.writeStartObject();
    json.writeNumberField("format", format);
    json.writeStringField("caution", advice.caution());
    json.writeObjectFieldStart("protocol");
    json.writeStringField("identifier", about.identifier());
    json.writeStringField("title", about.title());
    json.writeStringField("version", about.version());
    json.writeStringField("status", about.status().word());
    json.writeStringField("digest", advice.protocolDigest());
    json.writeEndObject();
    json.writeStringField("engineVersion", advice.identity().engineVersion());
  }

  void theCase(String name, Recommendation of) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeStringField("title", of.findings().title());
    json.writeStringField("stage", of.findings().stage());
    json.writeStringField("digest", of.identity().caseDigest());
    json.writeNumberField("faults", of.faults().size());
    json.writeEndObject();
  }

  void option(String name, RankedOption option) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeStringField("option", option.name());
    json.writeNumberField("place", option.place());
    json.writeStringField("availability", option.availability().word());
    json.writeBooleanField("canBeFirst", option.canBeFirst());
    json.writeObjectFieldStart("points");
    number("now", option.points().now());
    number("least", option.points().least());
    number("most", option.points().most());
    json.writeEndObject();
    strings("tiedWith", option.tiedWith());
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
    number("points", reason.points());
    json.writeBooleanField("certain", reason.isCertain());
    json.writeFieldName("row");
    rows.firing(reason.contribution().firing());
  }

  void premises(List<Premise> premises) throws IOException {
    json.writeArrayFieldStart("premises");
    for (Premise premise : premises) {
      json.writeStartObject();
      premise(premise);
      strings("names", names(premise.names()));
      strings("restsOn", names(premise.restsOn()));
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

  void number(String name, BigDecimal number) throws IOException {
    json.writeFieldName(name);
    json.writeNumber(Value.of(number).plain());
  }

  void strings(String name, List<String> texts) throws IOException {
    json.writeArrayFieldStart(name);
    for (String text : texts) {
      json.writeString(text);
    }
    json.writeEndArray();
  }
}
