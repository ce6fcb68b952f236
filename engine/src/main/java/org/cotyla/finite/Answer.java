package org.cotyla.finite;

import java.util.List;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Findings;

/** What a search among all cases came to. */
public sealed interface Answer {

  /**
   * A case of which the claims are true.
   *
   * @param findings the case; what it leaves open makes no difference to the claims
   * @param answers what each protocol answers to it
   */
  record Found(Findings findings, List<Recommendation> answers) implements Answer {
    public Found {
      answers = List.copyOf(answers);
    }
  }

  /** There is no such case: a proof over every case of the domain. */
  record Impossible() implements Answer {}

  /**
   * Neither found nor proven impossible.
   *
   * @param why what stood in the way, in plain words
   */
  record Undecided(String why) implements Answer {}
}
