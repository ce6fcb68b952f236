package org.cotyla.json;

import org.cotyla.explore.SmallestChange;

/**
 * Writes smallest changes as JSON, laid out as {@code smallest-change.schema.json} says. The same
 * case and goal always give the same text.
 */
public final class SmallestChangeJson {

  /** The version of the layout; it grows when a reader of the earlier one would go wrong. */
  public static final int FORMAT = 1;

  private SmallestChangeJson() {}

  /** The changes, indented, with a line end at the end. */
  public static String write(SmallestChange change) {
    return TidyJson.of(json -> new SmallestChangeWriter(json).write(change));
  }
}
