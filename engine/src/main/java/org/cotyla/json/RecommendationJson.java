package org.cotyla.json;

import org.cotyla.evaluate.Recommendation;

/**
 * Writes recommendations as JSON, whole, laid out as {@code recommendation.schema.json} says. The
 * same recommendation always gives the same text: no time, no machine, no order that varies.
 */
public final class RecommendationJson {

  /** The version of the layout; it grows when a reader of the earlier one would go wrong. */
  public static final int FORMAT = 1;

  private RecommendationJson() {}

  /** The recommendation as JSON text, indented, with a line end at its end. */
  public static String write(Recommendation recommendation) {
    return TidyJson.of(json -> new RecommendationWriter(json, recommendation).write());
  }
}
