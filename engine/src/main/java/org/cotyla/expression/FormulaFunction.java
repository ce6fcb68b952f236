package org.cotyla.expression;

import java.util.List;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.ValueType;

/**
 * A function that formulas may call. Functions are pure: the same arguments always give the same
 * result, and they reach no file, network, clock or other code.
 *
 * <p>The result over possible values must hold every result that single values could give.
 */
public interface FormulaFunction {

  /** The name in plain words, for example {@code round half up}. */
  String name();

  /** What each argument must be, in order. */
  List<ValueType> parameters();

  /** Whether the last argument may be repeated. */
  default boolean isVariadic() {
    return false;
  }

  /** What the argument in the given place, counted from 0, must be. */
  default ValueType parameter(int place) {
    return parameters().get(Math.min(place, parameters().size() - 1));
  }

  /** Whether the argument in the given place may be of the type. */
  default boolean accepts(ValueType type, int place) {
    return type == parameter(place);
  }

  ValueType result();

  /**
   * What the result can be. An argument that is nothing, or out of range, gives nothing. It is only
   * asked with arguments of types that it accepts.
   */
  PossibleValues apply(List<PossibleValues> arguments);
}
