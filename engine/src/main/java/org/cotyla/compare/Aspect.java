package org.cotyla.compare;

import java.util.List;
import java.util.Optional;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finite.Claim;

/** One thing in which the results of a decision can differ between two protocols. */
interface Aspect {

  /** True of the cases in which they differ in it. */
  Claim differs();

  /** How they differ in it on a case, when they do. */
  Optional<Difference> difference(List<Recommendation> answers);
}
