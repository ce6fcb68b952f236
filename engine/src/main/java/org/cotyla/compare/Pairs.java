package org.cotyla.compare;

import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cotyla.expression.Symbol;
import org.cotyla.name.NameIndex;
import org.cotyla.name.Names;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Row;

/**
 * Which decision of the old protocol is which of the new: the one of the same name; else the one
 * that gives the same outputs, or, when it votes, that shares most of its rows' ids.
 */
final class Pairs {

  private final Map<DecisionTable, DecisionTable> oldOf = new IdentityHashMap<>();
  private final List<DecisionTable> removed;

  Pairs(Protocol old, Protocol young) {
    NameIndex<DecisionTable> byName = NameIndex.of(old.decisions(), DecisionTable::name);
    Set<DecisionTable> left = java.util.Collections.newSetFromMap(new IdentityHashMap<>());
    left.addAll(old.decisions());
    for (DecisionTable table : young.decisions()) {
      byName
          .find(table.name())
          .ifPresent(
              was -> {
                oldOf.put(table, was);
                left.remove(was);
              });
    }
    for (DecisionTable table : young.decisions()) {
      if (!oldOf.containsKey(table)) {
        Optional<DecisionTable> renamed =
            old.decisions().stream()
                .filter(left::contains)
                .filter(was -> isRenamed(was, table))
                .findFirst();
        renamed.ifPresent(
            was -> {
              oldOf.put(table, was);
              left.remove(was);
            });
      }
    }
    this.removed = old.decisions().stream().filter(left::contains).toList();
  }

  private static boolean isRenamed(DecisionTable was, DecisionTable is) {
    if (was.votes() || is.votes()) {
      Set<String> ids = ids(was);
      Set<String> shared = new HashSet<>(ids);
      shared.retainAll(ids(is));
      return was.votes() && is.votes() && shared.size() * 2 > ids.size();
    }
    return outputs(was).equals(outputs(is));
  }

  private static Set<String> outputs(DecisionTable table) {
    Set<String> outputs = new HashSet<>();
    table.gives().stream().map(Symbol::name).map(Names::key).forEach(outputs::add);
    return outputs;
  }

  private static Set<String> ids(DecisionTable table) {
    Set<String> ids = new HashSet<>();
    table.rows().stream().map(Row::id).forEach(ids::add);
    return ids;
  }

  Optional<DecisionTable> oldOf(DecisionTable table) {
    return Optional.ofNullable(oldOf.get(table));
  }

  /** The decisions that only the old protocol has. */
  List<DecisionTable> removed() {
    return removed;
  }
}
