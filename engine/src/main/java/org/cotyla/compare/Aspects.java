package org.cotyla.compare;

import java.util.List;
import java.util.Optional;

/**
 * Everything in which a decision's results can differ between two protocols.
 *
 * @param all the aspects; empty when they cannot be compared
 * @param refusal why they cannot be compared
 */
record Aspects(List<Aspect> all, Optional<String> refusal) {

  Aspects {
    all = List.copyOf(all);
  }

  static Aspects of(List<Aspect> all) {
    return new Aspects(all, Optional.empty());
  }

  static Aspects refused(String why) {
    return new Aspects(List.of(), Optional.of(why));
  }
}
