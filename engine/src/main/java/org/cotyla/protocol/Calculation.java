package org.cotyla.protocol;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cotyla.expression.Expression;
import org.cotyla.expression.Symbol;
import org.cotyla.issue.CellRef;
import org.cotyla.value.Value;

/**
 * A derived number or a house constant.
 *
 * @param expression how it is worked out
 * @param unit the UCUM code of its unit; empty for none
 * @param constant its value, when it is the same in every case
 * @param at the cell of its name
 * @param expressionAt the cell of its expression
 */
public record Calculation(
    Symbol symbol,
    Expression expression,
    String unit,
    String meaning,
    List<String> sources,
    Optional<Value> constant,
    CellRef at,
    CellRef expressionAt)
    implements Step {

  public Calculation {
    sources = List.copyOf(sources);
  }

  @Override
  public String name() {
    return symbol.name();
  }

  @Override
  public Set<Symbol> needs() {
    return expression.references();
  }

  @Override
  public Set<Symbol> gives() {
    return Set.of(symbol);
  }
}
