package org.cotyla.cli.text;

import org.cotyla.protocol.Field;
import org.cotyla.unit.UnitWords;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/** Values of a field with its unit. */
final class Amounts {

  private Amounts() {}

  static String of(PossibleValues values, Field field) {
    String words = Words.values(values, field.symbol());
    return values.isNothing() ? words : UnitWords.of(words, field.unit());
  }

  static String of(Value value, Field field) {
    return of(PossibleValues.of(value), field);
  }
}
