package org.cotyla.compare;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/** Whether both protocols make the same of what a case states. Immutable. */
final class FieldReadings {

  /** All that the reading of a field hangs on. */
  private record Reading(
      String name,
      boolean given,
      ValueType type,
      List<String> choices,
      String unit,
      ValueSet allowed,
      int stage) {

    static Reading of(Field field) {
      Symbol symbol = field.symbol();
      return new Reading(
          field.name(),
          field.isGiven(),
          symbol.type(),
          symbol.choices(),
          field.unit(),
          field.allowed(),
          field.stage());
    }
  }

  private final boolean alike;
  private final List<Symbol> unlike;

  FieldReadings(Protocol old, Protocol young) {
    List<Reading> before = readings(old);
    this.alike =
        before.equals(readings(young)) && old.about().stages().equals(young.about().stages());
    Map<String, Reading> byName = new HashMap<>();
    before.forEach(reading -> byName.put(reading.name(), reading));
    this.unlike =
        young.givenFields().stream()
            .filter(field -> !Reading.of(field).equals(byName.get(field.name())))
            .map(Field::symbol)
            .toList();
  }

  private static List<Reading> readings(Protocol protocol) {
    return protocol.fields().stream().map(Reading::of).toList();
  }

  /** Whether both take the same cases, and read the same in them. */
  boolean areAlike() {
    return alike;
  }

  /** The given fields of the new protocol that the old one has not, or reads otherwise. */
  List<Symbol> unlike() {
    return unlike;
  }
}
