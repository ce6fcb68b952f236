package org.cotyla.check;

import org.cotyla.evaluate.Recommendation;
import org.cotyla.protocol.Safeguard;
import org.cotyla.value.Truth;

/** What became of a safeguard that was put to every complete case. */
public sealed interface SafeguardVerdict {

  Safeguard safeguard();

  /**
   * It holds in every case.
   *
   * @param applies whether some case meets its conditions at all; open when that is undecided
   */
  record Proven(Safeguard safeguard, Truth applies) implements SafeguardVerdict {}

  /**
   * A case breaks it.
   *
   * @param example such a case, from which no finding can be left out; what it leaves open makes no
   *     difference
   */
  record Broken(Safeguard safeguard, Recommendation example) implements SafeguardVerdict {}

  /** Neither proven nor broken within the limit. */
  record Undecided(Safeguard safeguard, String why) implements SafeguardVerdict {}
}
