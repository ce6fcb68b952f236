package org.cotyla.finite;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.expression.Symbol;
import org.cotyla.value.PossibleValues;

/**
 * A box of cases: what each of some names can be there. A name that is not among them can be
 * anything. Immutable.
 *
 * @param sides by name, in the order in which they are told
 */
public record Region(Map<Symbol, PossibleValues> sides) {

  public Region {
    sides = Collections.unmodifiableMap(new LinkedHashMap<>(sides));
  }

  /** True of the cases of the region. */
  public Claim claim() {
    List<Claim> all = new ArrayList<>();
    sides.forEach((symbol, values) -> all.add(new Claim.Is(symbol, values)));
    return new Claim.All(all);
  }

  Region with(Symbol symbol, PossibleValues values) {
    Map<Symbol, PossibleValues> changed = new LinkedHashMap<>(sides);
    changed.put(symbol, values);
    return new Region(changed);
  }

  Region without(Symbol symbol) {
    Map<Symbol, PossibleValues> changed = new LinkedHashMap<>(sides);
    changed.remove(symbol);
    return new Region(changed);
  }
}
