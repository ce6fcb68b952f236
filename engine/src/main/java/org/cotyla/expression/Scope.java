package org.cotyla.expression;

import org.cotyla.value.PossibleValues;

/** What each name can be while a formula or a test is evaluated. */
@FunctionalInterface
public interface Scope {

  /** What the name can be; an evaluation asks only for names that are known by then. */
  PossibleValues valueOf(Symbol symbol);

  /** A scope without names, for constant formulas. */
  static Scope empty() {
    return symbol -> {
      throw new IllegalStateException("`" + symbol.name() + "` is not a constant");
    };
  }
}
