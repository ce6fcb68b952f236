package org.cotyla.finite;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cotyla.finite.Alternatives.Leaf;
import org.cotyla.name.Names;
import org.cotyla.protocol.Field;
import org.cotyla.value.PossibleValues;

/**
 * The given fields of the cases in question, cut into classes when they are first asked for.
 * Protocols that are looked at together share them by name. Not thread-safe.
 */
final class GivenSide {

  private final Circuit circuit;
  private final Domain domain;
  private final Alternatives stage;
  private final Map<String, Alternatives> fields = new LinkedHashMap<>();
  private final Optional<GivenSide> first;
  private final Set<String> apart;

  GivenSide(Circuit circuit, Domain domain) {
    this.circuit = circuit;
    this.domain = domain;
    this.first = Optional.empty();
    this.apart = Set.of();
    List<Leaf> stages = new ArrayList<>();
    for (int place : domain.stages()) {
      int literal = domain.stages().size() == 1 ? circuit.yes() : circuit.unknown();
      stages.add(new Leaf(PossibleValues.of(org.cotyla.value.Value.of(place)), literal));
    }
    circuit.demandExactlyOne(stages.stream().map(Leaf::literal).toList());
    this.stage = Alternatives.of(circuit, stages);
  }

  private GivenSide(GivenSide first, Set<String> apart) {
    this.circuit = first.circuit;
    this.domain = first.domain;
    this.stage = first.stage;
    this.first = Optional.of(first);
    this.apart = Set.copyOf(apart);
  }

  /**
   * A second case of the domain, at the same stage, that differs from this one in no other fields
   * than those set apart.
   *
   * @param keys the keys of the fields that each case has for itself
   */
  GivenSide beside(Set<String> keys) {
    return new GivenSide(this, keys);
  }

  Domain domain() {
    return domain;
  }

  /** The classes of a field; it is nothing while the case's stage lies before its own. */
  Alternatives of(Field field) {
    String key = Names.key(field.name());
    if (first.isPresent() && !apart.contains(key)) {
      return first.get().of(field);
    }
    Alternatives known = fields.get(key);
    if (known == null) {
      known = classes(field);
      fields.put(key, known);
    }
    return known;
  }

  private Alternatives classes(Field field) {
    int reached = reached(field.stage());
    PossibleValues values = PossibleValues.of(domain.values(field));
    List<PossibleValues> pieces = Alternatives.pieces(values);
    List<Leaf> leaves = new ArrayList<>();
    for (PossibleValues piece : pieces) {
      leaves.add(new Leaf(piece, pieces.size() == 1 ? reached : circuit.unknown()));
    }
    if (reached != circuit.yes()) {
      leaves.add(new Leaf(PossibleValues.nothing(field.symbol().type()), -reached));
    }
    if (pieces.size() > 1) {
      circuit.demandExactlyOne(leaves.stream().map(Leaf::literal).toList());
    }
    return Alternatives.of(circuit, leaves);
  }

  private int reached(int place) {
    List<Integer> from = new ArrayList<>();
    for (int i = 0; i < domain.stages().size(); i++) {
      if (domain.stages().get(i) >= place) {
        from.add(stage.leaves().get(i).literal());
      }
    }
    return from.size() == domain.stages().size() ? circuit.yes() : circuit.or(from);
  }

  /** The stage of the case that was found last. */
  int foundStage() {
    return domain.stages().get(stage.found());
  }

  /** Holds when the case is at that stage. */
  int atStage(int place) {
    return stage.leaves().get(domain.stages().indexOf(place)).literal();
  }

  /** The fields of this case that something asked for, by key. */
  Map<String, Alternatives> used() {
    if (first.isEmpty()) {
      return fields;
    }
    Map<String, Alternatives> used = new LinkedHashMap<>(first.get().used());
    used.keySet().removeAll(apart);
    used.putAll(fields);
    return used;
  }
}
