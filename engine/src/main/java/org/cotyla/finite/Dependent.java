package org.cotyla.finite;

import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.cotyla.expression.Scope;
import org.cotyla.expression.Symbol;
import org.cotyla.value.PossibleValues;

/**
 * Something that is worked out from other names by arithmetic, which the solver cannot do: it
 * chooses a class for the result, and is taught each time the result cannot be in it.
 *
 * @param reads the names that it is worked out from
 * @param image what it can be when those names can be what the scope says
 * @param result its classes
 * @param when the literal under which it is the result
 * @param gives the name that has the result, when it has one
 * @param hardlyMet a class that values picked one by one hardly ever lead to, such as that two are
 *     the same; where it was chosen, or a case leads to it, the case is still worth a try
 */
record Dependent(
    Set<Symbol> reads,
    Function<Scope, PossibleValues> image,
    Alternatives result,
    int when,
    Optional<Symbol> gives,
    Optional<PossibleValues> hardlyMet) {

  Dependent {
    reads = Set.copyOf(reads);
  }

  Dependent(
      Set<Symbol> reads,
      Function<Scope, PossibleValues> image,
      Alternatives result,
      int when,
      Optional<Symbol> gives) {
    this(reads, image, result, when, gives, Optional.empty());
  }
}
