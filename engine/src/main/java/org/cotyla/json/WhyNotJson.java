package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.explain.Hinge;
import org.cotyla.explain.Lift;
import org.cotyla.explain.Ruling;
import org.cotyla.explain.Separation;
import org.cotyla.explain.WhyNot;
import org.cotyla.value.PossibleValues;

/**
 * Writes why an option does not stand before another as JSON, laid out as {@code
 * why-not.schema.json} says. The same answer always gives the same text.
 */
public final class WhyNotJson {

  /** The version of the layout; it grows when a reader of the earlier one would go wrong. */
  public static final int FORMAT = 1;

  private final JsonGenerator json;
  private final WhyNot whyNot;
  private final ExplanationWriter parts;

  private WhyNotJson(JsonGenerator json, WhyNot whyNot) {
    this.json = json;
    this.whyNot = whyNot;
    this.parts = new ExplanationWriter(json, whyNot.recommendation());
  }

  /** The explanation as JSON text, indented, with a line end at its end. */
  public static String write(WhyNot whyNot) {
    return TidyJson.of(json -> new WhyNotJson(json, whyNot).write());
  }

  private void write() throws IOException {
    json.writeStartObject();
    HeadJson.write(json, FORMAT, whyNot.recommendation());
    json.writeStringField("ranking", whyNot.ranking().ranking().name());
    json.writeBooleanField("firstIsCertain", whyNot.ranking().firstIsCertain());
    parts.option("option", whyNot.option());
    if (whyNot.against().isPresent()) {
      RankedOption against = whyNot.against().get();
      parts.option("against", against);
    }
    json.writeStringField("verdict", whyNot.verdict().word());
    ScalarJson.number(json, "pointsBehind", whyNot.pointsBehind());
    json.writeArrayFieldStart("separations");
    for (Separation separation : whyNot.separations()) {
      json.writeStartObject();
      json.writeStringField("option", separation.option());
      ScalarJson.number(json, "toAsked", separation.toAsked());
      parts.reason(separation.reason());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("rulings");
    for (Ruling ruling : whyNot.rulings()) {
      ruling(ruling);
    }
    json.writeEndArray();
    parts.premises(whyNot.premises());
    json.writeEndObject();
  }

  private void ruling(Ruling ruling) throws IOException {
    json.writeStartObject();
    parts.reason(ruling.reason());
    json.writeArrayFieldStart("hinges");
    for (Hinge hinge : ruling.hinges()) {
      json.writeStartObject();
      json.writeStringField("input", hinge.input().name());
      json.writeStringField("cell", hinge.test().at().plain());
      if (hinge.failsFor().isPresent()) {
        json.writeFieldName("failsFor");
        new ValuesJson(json).write(PossibleValues.of(hinge.failsFor().get()), hinge.input());
      }
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("lifts");
    for (Lift lift : ruling.lifts()) {
      lift(lift);
    }
    json.writeEndArray();
    json.writeBooleanField("allTried", ruling.isWhole());
    json.writeEndObject();
  }

  private void lift(Lift lift) throws IOException {
    json.writeStartObject();
    json.writeStringField("field", lift.field().name());
    json.writeStringField("unit", lift.field().unit());
    json.writeFieldName("now");
    new ValuesJson(json).write(lift.now().value(), lift.field().symbol());
    json.writeFieldName("values");
    new ValuesJson(json).write(PossibleValues.of(lift.values()), lift.field().symbol());
    json.writeBooleanField("allValues", lift.isWhole());
    json.writeBooleanField("frees", lift.frees());
    json.writeEndObject();
  }
}
