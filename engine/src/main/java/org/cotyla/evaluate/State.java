package org.cotyla.evaluate;

import org.cotyla.expression.Scope;
import org.cotyla.expression.Symbol;
import org.cotyla.value.PossibleValues;
import org.jspecify.annotations.Nullable;

/** What each name can be, filled in step by step during one evaluation. Not thread-safe. */
final class State implements Scope {

  private final @Nullable PossibleValues[] values;

  State(int names) {
    this.values = new PossibleValues[names];
  }

  void set(Symbol symbol, PossibleValues value) {
    values[symbol.index()] = value;
  }

  boolean has(Symbol symbol) {
    return values[symbol.index()] != null;
  }

  @Override
  public PossibleValues valueOf(Symbol symbol) {
    PossibleValues value = values[symbol.index()];
    if (value == null) {
      throw new IllegalStateException("`" + symbol.name() + "` is asked for before it is known");
    }
    return value;
  }
}
