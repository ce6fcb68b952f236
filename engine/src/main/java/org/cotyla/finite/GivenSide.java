package org.cotyla.finite;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cotyla.finite.Alternatives.Leaf;
import org.cotyla.name.Names;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/**
 * The given fields of the cases in question, cut into classes when they are first asked for.
 * Protocols that are looked at together share them by name. Not thread-safe.
 */
final class GivenSide {

  private final Circuit circuit;
  private final Domain domain;
  private final Alternatives stage;
  private final Map<String, Integer> earliest = new HashMap<>();
  private final Map<String, Alternatives> fields = new LinkedHashMap<>();
  private final Map<String, Map<Integer, Alternatives>> later = new HashMap<>();
  private final Optional<GivenSide> first;
  private final Set<String> apart;

  GivenSide(Circuit circuit, Domain domain, List<Protocol> protocols) {
    this.circuit = circuit;
    this.domain = domain;
    this.first = Optional.empty();
    this.apart = Set.of();
    for (Protocol protocol : protocols) {
      protocol.givenFields().forEach(field -> earliest.merge(key(field), field.stage(), Math::min));
    }
    List<Leaf> stages = new ArrayList<>();
    for (int place : domain.stages()) {
      int literal = domain.stages().size() == 1 ? circuit.yes() : circuit.unknown();
      stages.add(new Leaf(PossibleValues.of(org.cotyla.value.Value.of(place)), literal));
    }
    circuit.demandExactlyOne(stages.stream().map(Leaf::literal).toList());
    this.stage = Alternatives.of(circuit, stages);
  }

  private static String key(Field field) {
    return Names.key(field.name());
  }

  private GivenSide(GivenSide first, Set<String> apart) {
    this.circuit = first.circuit;
    this.domain = first.domain;
    this.stage = first.stage;
    this.earliest.putAll(first.earliest);
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
    if (first.isPresent() && !apart.contains(key(field))) {
      return first.get().of(field);
    }
    Alternatives known = fields.get(key(field));
    if (known == null) {
      known = classes(field, earliest.getOrDefault(key(field), field.stage()));
      fields.put(key(field), known);
    }
    Alternatives value = known;
    return field.stage() == earliest.getOrDefault(key(field), field.stage())
        ? value
        : later
            .computeIfAbsent(key(field), key -> new LinkedHashMap<>())
            .computeIfAbsent(field.stage(), place -> later(field, value));
  }

  private Alternatives classes(Field field, int place) {
    int reached = reached(place);
    List<PossibleValues> pieces = Alternatives.pieces(PossibleValues.of(domain.values(field)));
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

  /** The field as a protocol sees it that asks for it at a later stage than another one does. */
  private Alternatives later(Field field, Alternatives value) {
    int reached = reached(field.stage());
    List<Leaf> leaves = new ArrayList<>();
    for (PossibleValues piece : Alternatives.pieces(PossibleValues.of(domain.values(field)))) {
      leaves.add(new Leaf(piece, circuit.and(reached, value.within(piece.values(), false))));
    }
    leaves.add(new Leaf(PossibleValues.nothing(field.symbol().type()), -reached));
    return Alternatives.of(circuit, leaves, Optional.of(new SameValue(value)));
  }

  /** Cuts the value itself, so that everyone who sees it sees the same. */
  private record SameValue(Alternatives value) implements Alternatives.Cutter {
    @Override
    public int below(ValueSet below) {
      ValueType type = below.type();
      ValueSet upTo =
          ValueSet.between(type, null, false, below.hull().high(), below.hull().highIncluded());
      return value.within(upTo, false);
    }

    @Override
    public ValueSet possible(ValueSet values) {
      return values;
    }
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

  /** Everything that the field is seen as, when it has a value in what was found last. */
  List<Alternatives> seenAs(String key) {
    if (first.isPresent() && !apart.contains(key)) {
      return first.get().seenAs(key);
    }
    List<Alternatives> seen = new ArrayList<>(List.of(fields.get(key)));
    later.getOrDefault(key, Map.of()).values().stream()
        .filter(classes -> !classes.leaves().get(classes.found()).values().isNothing())
        .forEach(seen::add);
    return seen;
  }
}
