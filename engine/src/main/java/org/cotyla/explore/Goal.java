package org.cotyla.explore;

import java.util.Set;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Claim;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Ranking;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/** An answer that one would like to see. */
public sealed interface Goal {

  /** True of a case whose answer it is. */
  Claim claim();

  /** The names on which it hangs. */
  Set<Symbol> names();

  /** What it is about: the ranking or the decision. */
  String about();

  /** The option or value. */
  String wanted();

  /** An option comes first in its ranking. */
  record First(Ranking ranking, String wanted) implements Goal {
    @Override
    public Claim claim() {
      return new Claim.First(ranking, wanted);
    }

    @Override
    public Set<Symbol> names() {
      return Set.of(ranking.first());
    }

    @Override
    public String about() {
      return ranking.name();
    }
  }

  /** A decision comes to a value. */
  record Comes(DecisionTable table, Symbol output, Value value) implements Goal {
    @Override
    public Claim claim() {
      return new Claim.Is(output, PossibleValues.of(value));
    }

    @Override
    public Set<Symbol> names() {
      return Set.of(output);
    }

    @Override
    public String about() {
      return output.name();
    }

    @Override
    public String wanted() {
      return value.plain();
    }
  }
}
