package org.cotyla.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.compare.Difference.Kind;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finite.Claim;
import org.cotyla.value.Truth;

/**
 * Which of two entries of an ordered list comes first, where both are there.
 *
 * @param before true where the one comes before the other in the old protocol
 * @param after the same in the new protocol
 * @param both true where both are there in either
 */
record OrderAspect(String one, String other, Claim before, Claim after, Claim both)
    implements Aspect {

  @Override
  public Claim differs() {
    List<Claim> changed = new ArrayList<>();
    changed.add(new Claim.All(List.of(both, before, new Claim.Not(after))));
    changed.add(new Claim.All(List.of(both, after, new Claim.Not(before))));
    return new Claim.Any(changed);
  }

  @Override
  public Optional<Difference> difference(List<Recommendation> answers) {
    if (differs().truth(answers) != Truth.TRUE) {
      return Optional.empty();
    }
    boolean wasFirst = before.truth(answers) == Truth.TRUE;
    String was = wasFirst ? one : other;
    String now = wasFirst ? other : one;
    return Optional.of(
        new Difference(differs(), Kind.ORDER, "", Optional.of(was), Optional.of(now)));
  }
}
