package org.cotyla.compare;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Domain;
import org.cotyla.name.NameIndex;
import org.cotyla.name.Names;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;

/**
 * Collects, in order of need, the names that may have another value in the new protocol. It starts
 * with those that the two protocols define in different ways. Not thread-safe.
 */
final class UnsteadyNames {

  /**
   * What is known of a name whose value may differ.
   *
   * @param causes the edits that reach it
   * @param directly whether a calculation between was edited, rather than a decision
   * @param comparable whether the two protocols mean the same by it
   */
  record Unsteady(Set<String> causes, boolean directly, boolean comparable) {}

  private final Map<String, Unsteady> names = new HashMap<>();

  UnsteadyNames(Protocol old, Protocol young) {
    otherFields(old, young);
    otherGivers(old, young);
  }

  private void otherFields(Protocol old, Protocol young) {
    NameIndex<Field> before = NameIndex.of(old.fields(), Field::name);
    for (Field is : young.fields()) {
      before
          .find(is.name())
          .filter(was -> !isAlike(was, is))
          .ifPresent(
              was -> mark(is.name(), new Unsteady(Set.of("field " + is.name()), true, false)));
    }
  }

  private static boolean isAlike(Field was, Field is) {
    if (was.isGiven() != is.isGiven()) {
      return false;
    }
    return is.isGiven()
        ? Domain.isAlike(was, is)
        : was.symbol().type() == is.symbol().type() && was.unit().equals(is.unit());
  }

  /** What a case states in one protocol only cannot be asked of both. */
  private void otherGivers(Protocol old, Protocol young) {
    Map<String, Giver> before = Giver.of(old);
    Giver.of(young)
        .forEach(
            (key, is) -> {
              Giver was = before.getOrDefault(key, is);
              if (was != is) {
                boolean comparable = was != Giver.CASE && is != Giver.CASE;
                String name = young.vocabulary().symbol(key).map(Symbol::name).orElse(key);
                mark(name, new Unsteady(Set.of(name), true, comparable));
              }
            });
  }

  /** Adds a name, unless more was known of it before. */
  void mark(String name, Unsteady how) {
    names.putIfAbsent(Names.key(name), how);
  }

  /** The keys of the names that are known by now. */
  Set<String> keys() {
    return Set.copyOf(names.keySet());
  }

  /** What reaches any of the names, taken together. */
  Optional<Unsteady> reaching(Collection<Symbol> some) {
    Set<String> causes = new LinkedHashSet<>();
    boolean directly = false;
    boolean comparable = true;
    List<Symbol> inOrder = some.stream().sorted(Comparator.comparingInt(Symbol::index)).toList();
    for (Symbol symbol : inOrder) {
      Unsteady known = names.get(Names.key(symbol.name()));
      if (known != null) {
        causes.addAll(known.causes());
        directly |= known.directly();
        comparable &= known.comparable();
      }
    }
    return causes.isEmpty()
        ? Optional.empty()
        : Optional.of(new Unsteady(causes, directly, comparable));
  }
}
