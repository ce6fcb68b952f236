package org.cotyla.compare;

import java.util.LinkedHashMap;
import java.util.Map;
import org.cotyla.name.Names;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;

/** Where the value of a name comes from. */
enum Giver {
  CASE,
  DECISION,
  CALCULATION,
  RANKING;

  /** Where every name of the protocol has its value from, by the name's key. */
  static Map<String, Giver> of(Protocol protocol) {
    Map<String, Giver> givers = new LinkedHashMap<>();
    for (Field field : protocol.fields()) {
      givers.put(Names.key(field.name()), field.isGiven() ? CASE : DECISION);
    }
    protocol.calculations().forEach(one -> givers.put(Names.key(one.name()), CALCULATION));
    protocol.rankings().forEach(one -> givers.put(Names.key(one.first().name()), RANKING));
    return givers;
  }
}
