package org.cotyla.json;

import java.util.Optional;
import org.cotyla.explain.Replan;
import org.cotyla.json.RecordedPlan.Origin;

/**
 * Writes a plan that was run again as JSON, laid out as {@code replan.schema.json} says. The same
 * two cases always give the same text.
 */
public final class ReplanJson {

  /** The version of the layout; it grows when a reader of the earlier one would go wrong. */
  public static final int FORMAT = 1;

  private ReplanJson() {}

  /**
   * The comparison as JSON text, indented, with a line end at its end.
   *
   * @param origin what the plan was made with, when its file says so
   */
  public static String write(Replan replan, Optional<Origin> origin) {
    return TidyJson.of(json -> new ReplanWriter(json, replan).write(origin));
  }
}
