package org.cotyla.explore;

import java.util.List;
import java.util.Optional;
import org.cotyla.evaluate.Recommendation;

/**
 * Whether a datum can change a part of the answer.
 *
 * @param facet the part
 * @param verdict whether it can
 * @param among the results among which it decides: each of them comes or goes when only this datum
 *     is another; for rule-outs the options that it rules out or not
 * @param whole whether it is proven that it decides among no other results; false where the search
 *     met a limit, and where formulas give results that are not told apart
 * @param witness two ways to fill in what is open that differ in this datum only and come to
 *     different results
 * @param byItself whether the two values of the witness come to different results whatever the
 *     other open data are
 */
public record Reach(
    Facet facet,
    Verdict verdict,
    List<String> among,
    boolean whole,
    Optional<Witness> witness,
    boolean byItself) {

  /** Whether a datum can change something. */
  public enum Verdict {
    /** Shown by two cases. */
    CAN,
    /** Proven over every way to fill in the open data. */
    CANNOT,
    /** The search met its limit. */
    UNDECIDED
  }

  /** The answers to two cases that differ in one datum, and what this part comes to in each. */
  public record Witness(
      Recommendation one, String oneResult, Recommendation other, String otherResult) {}

  public Reach {
    among = List.copyOf(among);
  }

  static Reach cannot(Facet facet) {
    return new Reach(facet, Verdict.CANNOT, List.of(), true, Optional.empty(), false);
  }

  static Reach undecided(Facet facet) {
    return new Reach(facet, Verdict.UNDECIDED, List.of(), false, Optional.empty(), false);
  }

  /** Two cases show that it can; among which results is not looked for. */
  static Reach shown(Facet facet, Witness witness) {
    return new Reach(facet, Verdict.CAN, List.of(), false, Optional.of(witness), false);
  }
}
