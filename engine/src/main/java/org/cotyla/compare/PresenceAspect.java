package org.cotyla.compare;

import java.util.List;
import java.util.Optional;
import org.cotyla.compare.Difference.Kind;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finite.Claim;
import org.cotyla.value.Truth;

/**
 * Something that is there or not.
 *
 * @param about what it is, in words
 * @param before when it is there in the old protocol
 * @param after when it is there in the new protocol
 * @param appears the sort of difference when only the new protocol has it
 * @param goes the sort of difference when only the old protocol has it
 */
record PresenceAspect(String about, Claim before, Claim after, Kind appears, Kind goes)
    implements Aspect {

  @Override
  public Claim differs() {
    return new Claim.Any(List.of(onlyBefore(), onlyAfter()));
  }

  private Claim onlyBefore() {
    return new Claim.All(List.of(before, new Claim.Not(after)));
  }

  private Claim onlyAfter() {
    return new Claim.All(List.of(after, new Claim.Not(before)));
  }

  @Override
  public Optional<Difference> difference(List<Recommendation> answers) {
    if (onlyAfter().truth(answers) == Truth.TRUE) {
      return Optional.of(
          new Difference(onlyAfter(), appears, about, Optional.empty(), Optional.of(about)));
    }
    if (onlyBefore().truth(answers) == Truth.TRUE) {
      return Optional.of(
          new Difference(onlyBefore(), goes, about, Optional.of(about), Optional.empty()));
    }
    return Optional.empty();
  }
}
