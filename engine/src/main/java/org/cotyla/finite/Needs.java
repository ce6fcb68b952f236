package org.cotyla.finite;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Step;

/** Which step of a protocol gives a name and what each step needs, looked up once. */
final class Needs {

  private final int names;
  private final Map<Symbol, Step> givers = new HashMap<>();
  private final Map<Step, Set<Symbol>> needs = new IdentityHashMap<>();

  Needs(Protocol protocol) {
    this.names = protocol.vocabulary().symbols().size();
    protocol.steps().forEach(step -> step.gives().forEach(symbol -> givers.put(symbol, step)));
  }

  /** Whether the protocol has the name, which is not made up for a search. */
  boolean knows(Symbol symbol) {
    return symbol.index() < names;
  }

  Optional<Step> giver(Symbol symbol) {
    return Optional.ofNullable(givers.get(symbol));
  }

  Set<Symbol> of(Step step) {
    return needs.computeIfAbsent(step, Step::needs);
  }
}
