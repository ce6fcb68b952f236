package org.cotyla.json;

import java.util.Optional;
import org.cotyla.compare.Impact;
import org.cotyla.compare.ProtocolComparison;

/**
 * Writes what differs between two protocols as JSON, laid out as {@code comparison.schema.json}
 * says. The same two protocols and cases always give the same text.
 */
public final class ComparisonJson {

  /** The version of the layout; it grows when a reader of the earlier one would go wrong. */
  public static final int FORMAT = 1;

  private ComparisonJson() {}

  /** The comparison as JSON text, indented, with a line end at its end. */
  public static String write(ProtocolComparison comparison, Optional<Impact> impact) {
    return TidyJson.of(json -> new ComparisonWriter(json).write(comparison, impact));
  }
}
