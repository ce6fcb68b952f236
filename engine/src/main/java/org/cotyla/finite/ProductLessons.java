package org.cotyla.finite;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Alternatives.Leaf;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.ValueSet;

/**
 * Teaches a solver all that the classes of two names say of what is worked out from them, at once:
 * one contradiction after another would take a search for each. Not thread-safe.
 */
final class ProductLessons {

  /** Pairs of classes; more would cost more than they spare. */
  private static final int MOST_PAIRS = 1_500;

  private final ProtocolEncoding protocol;
  private final Map<Dependent, List<Integer>> taught = new IdentityHashMap<>();

  ProductLessons(ProtocolEncoding protocol) {
    this.protocol = protocol;
  }

  /** Teaches it, when it reads two names and their classes are not those of last time. */
  void teach(Dependent dependent) {
    List<Symbol> reads =
        dependent.reads().stream()
            .sorted(java.util.Comparator.comparingInt(Symbol::index))
            .toList();
    if (reads.size() != 2) {
      return;
    }
    List<Leaf> one = List.copyOf(protocol.classes(reads.get(0)).leaves());
    List<Leaf> other = List.copyOf(protocol.classes(reads.get(1)).leaves());
    List<Leaf> results = List.copyOf(dependent.result().leaves());
    List<Integer> sizes = List.of(one.size(), other.size(), results.size());
    boolean known = sizes.equals(taught.put(dependent, sizes));
    if (known || one.size() * other.size() > MOST_PAIRS) {
      return;
    }
    for (Leaf first : one) {
      List<List<Integer>> allowed = new ArrayList<>();
      results.forEach(result -> allowed.add(new ArrayList<>()));
      for (Leaf second : other) {
        PossibleValues image =
            dependent
                .image()
                .apply(symbol -> symbol.equals(reads.get(0)) ? first.values() : second.values());
        List<Integer> possible = new ArrayList<>();
        for (int i = 0; i < results.size(); i++) {
          if (meets(image, results.get(i).values())) {
            possible.add(results.get(i).literal());
            allowed.get(i).add(second.literal());
          }
        }
        if (possible.size() < results.size()) {
          possible.addAll(List.of(-dependent.when(), -first.literal(), -second.literal()));
          protocol.circuit().demandAny(possible);
        }
      }
      for (int i = 0; i < results.size(); i++) {
        if (allowed.get(i).size() < other.size()) {
          List<Integer> clause = new ArrayList<>(allowed.get(i));
          clause.addAll(List.of(-dependent.when(), -first.literal(), -results.get(i).literal()));
          protocol.circuit().demandAny(clause);
        }
      }
    }
  }

  private static boolean meets(PossibleValues image, PossibleValues result) {
    ValueSet values = image.values();
    boolean common = image.type() == result.type() && values.intersects(result.values());
    return common || (image.orNothing() && result.orNothing());
  }
}
