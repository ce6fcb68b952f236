package org.cotyla.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import org.cotyla.evaluate.Recommendation;

/**
 * Writes recommendations as JSON, whole, laid out as {@code recommendation.schema.json} says. The
 * same recommendation always gives the same text: no time, no machine, no order that varies.
 */
public final class RecommendationJson {

  /** The version of the layout; it grows when a reader of the earlier one would go wrong. */
  public static final int FORMAT = 1;

  private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");

  private static final Separators SEPARATORS =
      Separators.createDefaultInstance()
          .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
          .withArrayEmptySeparator("")
          .withObjectEmptySeparator("");

  private RecommendationJson() {}

  /** The recommendation as JSON text, indented, with a line end at its end. */
  public static String write(Recommendation recommendation) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.setPrettyPrinter(
          new DefaultPrettyPrinter(SEPARATORS)
              .withObjectIndenter(INDENT)
              .withArrayIndenter(INDENT));
      new RecommendationWriter(json, recommendation).write();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.append('\n').toString();
  }
}
