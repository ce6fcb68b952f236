package org.cotyla.json;

import org.cotyla.explore.Conditions;
import org.cotyla.explore.Margins;
import org.cotyla.explore.WhatMatters;

/**
 * Writes what an answer hangs on as JSON, laid out as {@code what-matters.schema.json} says. The
 * same case always gives the same text.
 */
public final class WhatMattersJson {

  /** The version of the layout; it grows when a reader of the earlier one would go wrong. */
  public static final int FORMAT = 1;

  private WhatMattersJson() {}

  /** The missing data and the lines near measured numbers, indented, with a line end at the end. */
  public static String write(WhatMatters matters, Conditions conditions, Margins margins) {
    return TidyJson.of(json -> new WhatMattersWriter(json, conditions).write(matters, margins));
  }
}
