package org.cotyla.finite;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import org.cotyla.expression.Symbol;
import org.cotyla.name.Names;
import org.cotyla.protocol.Step;

/** Every name that a claim hangs on, for each of the protocols that it is put to. */
final class Cone {

  private final List<Needs> needs;
  private final BiFunction<Symbol, Integer, Optional<Symbol>> twin;
  private final Map<Integer, Set<Symbol>> names = new LinkedHashMap<>();

  private Cone(List<Needs> needs, BiFunction<Symbol, Integer, Optional<Symbol>> twin) {
    this.needs = needs;
    this.twin = twin;
  }

  /**
   * @param twin the name by which the first protocol encodes a name of another one, when it does
   */
  static Cone of(
      Claim claim, List<Needs> needs, BiFunction<Symbol, Integer, Optional<Symbol>> twin) {
    Cone cone = new Cone(needs, twin);
    cone.collect(claim, 0);
    return cone;
  }

  /** Whether something that is worked out has a say in the claim. */
  boolean holds(int side, Dependent dependent) {
    Set<Symbol> known = names.getOrDefault(side, Set.of());
    return dependent
        .gives()
        .map(known::contains)
        .orElseGet(
            () ->
                dependent.reads().stream()
                    .allMatch(symbol -> known.contains(symbol) || !needs.get(side).knows(symbol)));
  }

  /** Whether the claim hangs on the given field, by the key of its name. */
  boolean hangsOn(String key) {
    return names.values().stream()
        .flatMap(Set::stream)
        .anyMatch(symbol -> Names.key(symbol.name()).equals(key));
  }

  private void collect(Claim claim, int side) {
    if (claim instanceof Claim.Of of) {
      collect(of.claim(), of.other());
    } else if (claim instanceof Claim.Matches matches) {
      step(matches.table(), side);
    } else if (claim instanceof Claim.Counts counts) {
      step(counts.table(), side);
    } else if (claim instanceof Claim.NoRow none) {
      step(none.table(), side);
    } else if (claim instanceof Claim.Is is) {
      add(is.name(), side);
    } else if (claim instanceof Claim.Holds holds) {
      add(holds.input(), side);
      holds.test().references().forEach(symbol -> add(symbol, side));
    } else if (claim instanceof Claim.First first) {
      step(first.ranking(), side);
    } else if (claim instanceof Claim.RuledOut out) {
      step(out.ranking(), side);
    } else if (claim instanceof Claim.Not not) {
      collect(not.claim(), side);
    } else if (claim instanceof Claim.All all) {
      all.claims().forEach(part -> collect(part, side));
    } else if (claim instanceof Claim.Any any) {
      any.claims().forEach(part -> collect(part, side));
    } else if (claim instanceof Claim.AtLeast many) {
      many.claims().forEach(part -> collect(part, side));
    } else if (claim instanceof Claim.AddUpTo sum) {
      sum.terms().forEach(term -> collect(term.claim(), side));
    } else {
      throw new IllegalStateException("no such claim");
    }
  }

  private void step(Step step, int side) {
    step.gives().forEach(symbol -> add(symbol, side));
    needs.get(side).of(step).forEach(symbol -> add(symbol, side));
  }

  private void add(Symbol symbol, int side) {
    if (names.computeIfAbsent(side, unknown -> new HashSet<>()).add(symbol)) {
      needs.get(side).giver(symbol).ifPresent(step -> step(step, side));
      twin.apply(symbol, side).ifPresent(same -> add(same, 0));
    }
  }
}
