package org.cotyla.json;

import java.util.Optional;
import org.cotyla.explain.Why;
import org.cotyla.explore.SmallestChange;

/**
 * Writes how an option got its place as JSON, laid out as {@code why.schema.json} says. The same
 * answer always gives the same text.
 */
public final class WhyJson {

  /** The version of the layout; it grows when a reader of the earlier one would go wrong. */
  public static final int FORMAT = 1;

  private WhyJson() {}

  /**
   * The explanation as JSON text, indented, with a line end at its end.
   *
   * @param change what would have to be true for the option to come first, when it does not
   */
  public static String write(Why why, Optional<SmallestChange> change) {
    return TidyJson.of(
        json -> {
          ExplanationWriter parts = new ExplanationWriter(json, why.recommendation());
          json.writeStartObject();
          HeadJson.write(json, FORMAT, why.recommendation());
          json.writeStringField("ranking", why.ranking().ranking().name());
          json.writeNumberField("options", why.ranking().options().size());
          json.writeBooleanField("firstIsCertain", why.ranking().firstIsCertain());
          parts.option("option", why.option());
          parts.reasons("reasons", why.reasons());
          ScalarJson.number(json, "sum", why.sum());
          json.writeBooleanField("addsUp", why.addsUp());
          if (change.isPresent()) {
            json.writeObjectFieldStart("toComeFirst");
            new SmallestChangeWriter(json).ways(change.get());
            json.writeEndObject();
          }
          parts.premises(why.premises());
          json.writeEndObject();
        });
  }
}
