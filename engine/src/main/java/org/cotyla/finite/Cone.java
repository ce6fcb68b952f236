package org.cotyla.finite;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.cotyla.expression.Symbol;
import org.cotyla.name.Names;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Step;

/** Every name that a claim hangs on, for each of the protocols that it is put to. */
final class Cone {

  private final List<Protocol> protocols;
  private final Map<Integer, Set<Symbol>> names = new LinkedHashMap<>();

  private Cone(List<Protocol> protocols) {
    this.protocols = protocols;
  }

  static Cone of(Claim claim, List<Protocol> protocols) {
    Cone cone = new Cone(protocols);
    cone.collect(claim, 0);
    return cone;
  }

  /** Whether something that is worked out has a say in the claim. */
  boolean holds(int side, Dependent dependent) {
    Set<Symbol> known = names.getOrDefault(side, Set.of());
    int own = protocols.get(side).vocabulary().symbols().size();
    return dependent.gives().isPresent()
        ? known.contains(dependent.gives().get())
        : dependent.reads().stream()
            .allMatch(symbol -> symbol.index() >= own || known.contains(symbol));
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
    }
  }

  private void step(Step step, int side) {
    step.gives().forEach(symbol -> add(symbol, side));
    step.needs().forEach(symbol -> add(symbol, side));
  }

  private void add(Symbol symbol, int side) {
    if (names.computeIfAbsent(side, unknown -> new HashSet<>()).add(symbol)) {
      for (Step step : protocols.get(side).steps()) {
        if (step.gives().contains(symbol)) {
          step(step, side);
        }
      }
    }
  }
}
