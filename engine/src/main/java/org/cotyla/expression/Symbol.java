package org.cotyla.expression;

import java.util.List;
import org.cotyla.value.ValueType;

/**
 * A name that cells and formulas may use: a field, a calculation, or what a decision gives.
 *
 * @param name the name as its author spelled it
 * @param index its place in an evaluation's values, counted from 0
 * @param type what kind of value it has
 * @param choices the allowed values in order when it is a choice, else empty
 */
public record Symbol(String name, int index, ValueType type, List<String> choices) {

  public Symbol {
    choices = List.copyOf(choices);
  }

  /** Cheap, since symbols are looked up often; equal symbols have equal places. */
  @Override
  public int hashCode() {
    return index;
  }

  public boolean isChoice() {
    return !choices.isEmpty();
  }
}
