package org.cotyla.cli.text;

import java.util.Locale;
import org.cotyla.audit.Proportion;

/** Figures of an audit as people read them. */
public final class Figures {

  private Figures() {}

  /** A share as a percentage with one decimal. */
  public static String percent(double share) {
    return String.format(Locale.ROOT, "%.1f %%", share * 100);
  }

  /** A count of a whole, as a percentage with its interval. */
  public static String of(Proportion proportion) {
    String counted = proportion.count() + " of " + proportion.of();
    return proportion.share().isEmpty()
        ? counted
        : counted
            + " = "
            + percent(proportion.share().getAsDouble())
            + " "
            + range(proportion.lower(), proportion.upper());
  }

  /** Two ends of an interval, as percentages in brackets. */
  public static String range(double lower, double upper) {
    return String.format(Locale.ROOT, "(%.1f to %.1f)", lower * 100, upper * 100);
  }
}
