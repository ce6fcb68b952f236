package org.cotyla.json;

import org.cotyla.explain.Why;

/**
 * Writes how an option got its place as JSON, laid out as {@code why.schema.json} says. The same
 * answer always gives the same text.
 */
public final class WhyJson {

  /** The version of the layout; it grows when a reader of the earlier one would go wrong. */
  public static final int FORMAT = 1;

  private WhyJson() {}

  /** The explanation as JSON text, indented, with a line end at its end. */
  public static String write(Why why) {
    return TidyJson.of(
        json -> {
          ExplanationWriter parts = new ExplanationWriter(json, why.recommendation());
          parts.head(FORMAT);
          parts.theCase("case", why.recommendation());
          json.writeStringField("ranking", why.ranking().ranking().name());
          json.writeNumberField("options", why.ranking().options().size());
          json.writeBooleanField("firstIsCertain", why.ranking().firstIsCertain());
          parts.option("option", why.option());
          parts.reasons("reasons", why.reasons());
          parts.number("sum", why.sum());
          json.writeBooleanField("addsUp", why.addsUp());
          parts.premises(why.premises());
          json.writeEndObject();
        });
  }
}
