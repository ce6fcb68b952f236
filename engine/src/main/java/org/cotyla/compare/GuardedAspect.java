package org.cotyla.compare;

import java.util.List;
import java.util.Optional;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finite.Claim;
import org.cotyla.value.Truth;

/** A difference that only counts where something holds. */
record GuardedAspect(Aspect aspect, Claim where) implements Aspect {

  @Override
  public Claim differs() {
    return new Claim.All(List.of(where, aspect.differs()));
  }

  @Override
  public Optional<Difference> difference(List<Recommendation> answers) {
    return where.truth(answers) == Truth.TRUE
        ? aspect
            .difference(answers)
            .map(
                difference ->
                    new Difference(
                        new Claim.All(List.of(where, difference.claim())),
                        difference.kind(),
                        difference.about(),
                        difference.was(),
                        difference.now()))
        : Optional.empty();
  }
}
