package org.cotyla.protocol;

import java.util.Set;
import org.cotyla.expression.Symbol;

/** One thing that is worked out in an evaluation; steps are in order of need. */
public sealed interface Step permits Calculation, DecisionTable, Ranking {

  String name();

  /** The names that must be known before it. */
  Set<Symbol> needs();

  /** The names that are known after it. */
  Set<Symbol> gives();
}
