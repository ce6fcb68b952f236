package org.cotyla.finite;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.ValueSet;

/**
 * The classes into which a name's values are cut so far, exactly one of which holds. A class is cut
 * further when something has to tell its values apart. Not thread-safe.
 */
final class Alternatives {

  /**
   * One class.
   *
   * @param values its values, without a gap; or nothing
   * @param literal holds when the name's value is one of them
   */
  record Leaf(PossibleValues values, int literal) {}

  /** Knows what it means that a name's value lies low in its class. */
  interface Cutter {
    /** Holds when the value is no higher than the values below. */
    int below(ValueSet below);

    /** Those of the values that can come about. */
    ValueSet possible(ValueSet values);
  }

  private final Circuit circuit;
  private final Optional<Cutter> cutter;
  private final List<Leaf> leaves = new ArrayList<>();
  private final PossibleValues all;

  private Alternatives(Circuit circuit, PossibleValues all, Optional<Cutter> cutter) {
    this.circuit = circuit;
    this.all = all;
    this.cutter = cutter;
  }

  /** Classes of a name about which nothing else is said yet: one for each point and stretch. */
  static Alternatives free(Circuit circuit, PossibleValues all) {
    Alternatives free = new Alternatives(circuit, all, Optional.empty());
    List<PossibleValues> pieces = pieces(all);
    for (PossibleValues piece : pieces) {
      int literal = pieces.size() == 1 ? circuit.yes() : circuit.unknown();
      free.leaves.add(new Leaf(piece, literal));
    }
    if (pieces.size() > 1) {
      circuit.demandExactlyOne(free.leaves.stream().map(Leaf::literal).toList());
    }
    return free;
  }

  /** Classes whose literals are known; exactly one must hold by how they were made. */
  static Alternatives of(Circuit circuit, List<Leaf> leaves) {
    return of(circuit, leaves, Optional.empty());
  }

  /** The same, where a class is cut in a way of its own. */
  static Alternatives of(Circuit circuit, List<Leaf> leaves, Optional<Cutter> cutter) {
    PossibleValues all =
        leaves.stream().map(Leaf::values).reduce(PossibleValues::union).orElseThrow();
    Alternatives of = new Alternatives(circuit, all, cutter);
    of.leaves.addAll(leaves);
    return of;
  }

  static List<PossibleValues> pieces(PossibleValues all) {
    List<PossibleValues> pieces = new ArrayList<>();
    for (Interval part : Steps.within(all.values()).parts()) {
      pieces.add(PossibleValues.of(ValueSet.ofIntervals(all.type(), List.of(part))));
    }
    if (all.orNothing()) {
      pieces.add(PossibleValues.nothing(all.type()));
    }
    return pieces;
  }

  List<Leaf> leaves() {
    return leaves;
  }

  /** Every value that the name can have. */
  PossibleValues all() {
    return all;
  }

  /** Holds when the value lies in the region, or is nothing and that is allowed. */
  int within(ValueSet region, boolean orNothing) {
    align(region);
    List<Integer> inside = new ArrayList<>();
    for (Leaf leaf : leaves) {
      boolean in =
          leaf.values().isNothing() ? orNothing : region.containsAll(leaf.values().values());
      if (in) {
        inside.add(leaf.literal());
      }
    }
    return inside.size() == leaves.size() ? circuit.yes() : circuit.or(inside);
  }

  /** Cuts every class that lies partly in the region. */
  private void align(ValueSet region) {
    for (int i = 0; i < leaves.size(); i++) {
      Leaf leaf = leaves.get(i);
      ValueSet values = leaf.values().values();
      if (leaf.values().isNothing() || values.single().isPresent()) {
        continue;
      }
      for (Interval part : region.parts()) {
        Optional<ValueSet> below = cutBelow(values, part);
        if (below.isPresent() && cut(i, below.get())) {
          i--;
          break;
        }
      }
    }
  }

  /** The lower part of the values when an end of the interval falls among them. */
  private static Optional<ValueSet> cutBelow(ValueSet values, Interval part) {
    ValueSet before =
        part.low() == null
            ? ValueSet.none(values.type())
            : ValueSet.between(values.type(), null, false, part.low(), !part.lowIncluded());
    ValueSet upTo =
        part.high() == null
            ? ValueSet.all(values.type())
            : ValueSet.between(values.type(), null, false, part.high(), part.highIncluded());
    for (ValueSet lower : List.of(before, upTo)) {
      ValueSet below = values.intersect(lower);
      if (!below.isEmpty() && !below.equals(values)) {
        return Optional.of(below);
      }
    }
    return Optional.empty();
  }

  /**
   * Cuts one class in two: the values below, and the rest. Where one of them holds no value, as
   * between two days, the class only becomes narrower. Says whether anything changed.
   */
  boolean cut(int index, ValueSet below) {
    Leaf whole = leaves.get(index);
    ValueSet values = whole.values().values();
    ValueSet lower = possible(below);
    ValueSet upper = possible(values.intersect(below.complement()));
    if (lower.isEmpty() || upper.isEmpty()) {
      ValueSet left = lower.isEmpty() ? upper : lower;
      boolean narrower = !left.isEmpty() && !left.equals(values);
      if (narrower) {
        leaves.set(index, new Leaf(PossibleValues.of(left), whole.literal()));
      }
      return narrower;
    }
    int isLow = cutter.map(known -> known.below(below)).orElseGet(circuit::unknown);
    int low = circuit.and(whole.literal(), isLow);
    int high = circuit.and(whole.literal(), -isLow);
    leaves.set(index, new Leaf(PossibleValues.of(lower), low));
    leaves.add(index + 1, new Leaf(PossibleValues.of(upper), high));
    return true;
  }

  private ValueSet possible(ValueSet values) {
    ValueSet there = Steps.within(values);
    return cutter.map(known -> known.possible(there)).orElse(there);
  }

  /** Whether its classes say by themselves when they hold, however finely they are cut. */
  boolean isExact() {
    return cutter.isPresent();
  }

  /** The place of the class that holds in what was found last. */
  int found() {
    for (int i = 0; i < leaves.size(); i++) {
      if (circuit.holds(leaves.get(i).literal())) {
        return i;
      }
    }
    throw new IllegalStateException("no class holds");
  }
}
