package org.cotyla.caseform;

import org.cotyla.protocol.Field;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;

/** What may stand in the value of a finding, in words. */
final class AllowedWords {

  private AllowedWords() {}

  static String of(Field field) {
    if (field.symbol().isChoice()) {
      return String.join(", ", field.symbol().choices());
    }
    String allowed =
        switch (field.symbol().type()) {
          case YES_NO -> "yes, no";
          case TEXT -> "free text";
          case DATE -> isAny(field) ? "a date, as 2026-01-31" : plain(field.allowed());
          case NUMBER -> isAny(field) ? "a number" : plain(field.allowed());
        };
    boolean narrower = field.usual().filter(usual -> !usual.equals(field.allowed())).isPresent();
    return narrower
        ? allowed + "; usually " + field.usual().map(AllowedWords::plain).orElse("")
        : allowed;
  }

  private static boolean isAny(Field field) {
    return field.allowed().equals(ValueSet.all(field.allowed().type()));
  }

  /** A single interval with both ends as {@code 0 to 120}, anything else as protocols write it. */
  private static String plain(ValueSet values) {
    Interval hull = values.hull();
    Value low = hull.low();
    Value high = hull.high();
    boolean bothEnds = low != null && high != null && hull.lowIncluded() && hull.highIncluded();
    return bothEnds && low != null && high != null && values.parts().size() == 1
        ? low.plain() + " to " + high.plain()
        : values.plain();
  }
}
