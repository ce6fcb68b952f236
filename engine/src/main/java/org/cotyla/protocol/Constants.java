package org.cotyla.protocol;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.cotyla.expression.Expression;
import org.cotyla.expression.Scope;
import org.cotyla.expression.Symbol;
import org.cotyla.name.Names;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/** The names of a protocol that have one value in every case. Immutable. */
public final class Constants {

  private final Map<Symbol, Value> values = new HashMap<>();

  public Constants(Protocol protocol) {
    protocol
        .calculations()
        .forEach(
            calculation ->
                calculation.constant().ifPresent(value -> values.put(calculation.symbol(), value)));
  }

  public boolean has(Symbol symbol) {
    return values.containsKey(symbol);
  }

  /** What the formula gives in every case, when it uses constants only. */
  public Optional<PossibleValues> of(Expression expression) {
    if (!values.keySet().containsAll(expression.references())) {
      return Optional.empty();
    }
    Scope scope =
        symbol -> Optional.ofNullable(values.get(symbol)).map(PossibleValues::of).orElseThrow();
    return Optional.of(expression.evaluate(scope)).filter(PossibleValues::isCertain);
  }

  /** The values of the constants among the names, in a text that is equal when they are. */
  public String named(Iterable<Symbol> symbols) {
    Map<String, String> named = new TreeMap<>();
    for (Symbol symbol : symbols) {
      Value value = values.get(symbol);
      if (value != null) {
        named.put(Names.key(symbol.name()), value.literal());
      }
    }
    return named.isEmpty() ? "" : " where " + named;
  }
}
