package org.cotyla.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.cotyla.finite.Answer;
import org.cotyla.finite.Claim;

/**
 * A region whose smallest example is still being looked for, which needs no solver and so goes on
 * beside the search for the next region.
 */
record PendingRegion(
    List<Condition> conditions,
    boolean whole,
    Difference difference,
    CompletableFuture<Answer.Found> example) {

  /** Waits for the example. */
  Region await() {
    return new Region(conditions, whole, difference, example.join());
  }

  /** The cases that the region speaks of. */
  Claim cases() {
    List<Claim> all = new ArrayList<>();
    conditions.forEach(condition -> all.add(condition.claim()));
    all.add(difference.claim());
    return new Claim.All(all);
  }
}
