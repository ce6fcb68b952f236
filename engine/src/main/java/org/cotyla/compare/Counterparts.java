package org.cotyla.compare;

import java.util.Optional;
import org.cotyla.name.NameIndex;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Step;

/** Which step of the old protocol is which of the new. Immutable. */
final class Counterparts {

  private final Pairs pairs;
  private final NameIndex<Calculation> calculations;
  private final NameIndex<Ranking> rankings;

  Counterparts(Protocol old, Pairs pairs) {
    this.pairs = pairs;
    this.calculations = NameIndex.of(old.calculations(), Calculation::name);
    this.rankings = NameIndex.of(old.rankings(), Ranking::name);
  }

  Optional<Calculation> of(Calculation is) {
    return calculations.find(is.name());
  }

  Optional<DecisionTable> of(DecisionTable is) {
    return pairs.oldOf(is);
  }

  Optional<Ranking> of(Ranking is) {
    return rankings.find(is.name());
  }

  /** Whether the same sheets vote in both. */
  boolean haveSameVoters(Ranking was, Ranking is) {
    return was.voters().size() == is.voters().size()
        && is.voters().stream()
            .allMatch(voter -> of(voter).filter(was.voters()::contains).isPresent());
  }

  /** Whether the step says the same in both of the names that it reads, by the same rows. */
  boolean sayTheSame(Step step, WrittenAlike alike) {
    if (step instanceof Calculation is) {
      return of(is).filter(was -> alike.are(was, is)).isPresent();
    }
    if (step instanceof DecisionTable is) {
      return of(is).filter(was -> alike.are(was, is) && alike.haveSameIds(was, is)).isPresent();
    }
    Ranking is = (Ranking) step;
    return of(is)
        .filter(was -> WrittenAlike.haveSameOptions(was, is) && haveSameVoters(was, is))
        .isPresent();
  }
}
