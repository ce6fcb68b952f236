package org.cotyla.explore;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Step;

/** Which names of a protocol are worked out from which. */
final class Dependence {

  private Dependence() {}

  /** The name and every name that is worked out from it, directly or through others. */
  static Set<Symbol> on(Protocol protocol, Symbol name) {
    Set<Symbol> changing = new HashSet<>(Set.of(name));
    for (Step step : protocol.steps()) {
      if (step.needs().stream().anyMatch(changing::contains)) {
        changing.addAll(step.gives());
      }
    }
    return changing;
  }

  /** The given fields that any of the names is worked out from, in the order of the workbook. */
  static List<Field> fields(Protocol protocol, Set<Symbol> names) {
    Set<Symbol> needed = new HashSet<>(names);
    for (int i = protocol.steps().size() - 1; i >= 0; i--) {
      Step step = protocol.steps().get(i);
      if (step.gives().stream().anyMatch(needed::contains)) {
        needed.addAll(step.needs());
      }
    }
    return protocol.givenFields().stream()
        .filter(field -> needed.contains(field.symbol()))
        .collect(Collectors.toList());
  }
}
