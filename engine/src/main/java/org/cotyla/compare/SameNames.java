package org.cotyla.compare;

import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.Set;
import org.cotyla.expression.Symbol;
import org.cotyla.name.Names;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Step;

/**
 * Collects, in order of need, the names that have the same value in both protocols in every case. A
 * search takes them as one, and need not find that out again. Where rows of some table contradict
 * each other, the two protocols leave the same values open. Not thread-safe.
 */
final class SameNames {

  private final Side young;
  private final Set<String> keys = new HashSet<>();
  private final Set<Step> steps = Collections.newSetFromMap(new IdentityHashMap<>());

  SameNames(Side young) {
    this.young = young;
  }

  /** The keys of the names that are known by now. */
  Set<String> keys() {
    return Set.copyOf(keys);
  }

  /** A field that a case states, and that means the same to both. */
  void addGiven(Field field) {
    keys.add(Names.key(field.name()));
  }

  /** A step of which both say the same; its values are the same when what it needs are. */
  void addWrittenAlike(Step step) {
    boolean fromTheSame =
        step instanceof Ranking ranking
            ? steps.containsAll(ranking.voters())
            : step.needs().stream().allMatch(this::isSame);
    if (fromTheSame) {
      addProven(step);
    }
  }

  /** A step whose values were proven to be the same, without leaving any case out. */
  void addProven(Step step) {
    steps.add(step);
    step.gives().forEach(symbol -> keys.add(Names.key(symbol.name())));
  }

  /** What both say alike counts a constant by its value. */
  private boolean isSame(Symbol symbol) {
    return keys.contains(Names.key(symbol.name())) || young.constants().has(symbol);
  }
}
