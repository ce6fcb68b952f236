package org.cotyla.explore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.MissingDatum;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finite.Effort;

/**
 * For each datum that is missing or only partly known: whether it can change the answer, and what
 * of it. Immutable.
 *
 * <p>A datum can change a part of the answer when two cases, which fill in all that is open and
 * agree in everything but this datum, differ in that part. That is shown by such a pair, or proven
 * impossible over every pair. Where rows of the protocol contradict each other on a case, either of
 * them may count, as long as the two cases can be told apart.
 *
 * <p>No two data change a part only together: if neither of them can by itself, changing first the
 * one and then the other changes nothing, so both cannot. What two data can do is to matter only
 * for some values of each other; see {@link Conditions}.
 *
 * @param advice the answer to the case
 * @param data those that can change most first: by the number of different first options and
 *     headline results among which they decide, then of options that they rule out or not, then
 *     whether they change anything shown; then in the order of the answer's missing data
 */
public record WhatMatters(Recommendation advice, List<Influence> data) {

  /** Enough for a protocol of some hundred rows; less would leave some questions undecided. */
  private static final Effort EFFORT = new Effort(20_000, 200, 24);

  /** About 0.3 s on the shipped protocol, see the benchmarks. */
  private static final int QUICK_AT_MOST = 8;

  private static final Comparator<Influence> MOST_FIRST =
      Comparator.<Influence>comparingInt(one -> -one.among(Facet.Kind.FIRST, Facet.Kind.DECISION))
          .thenComparingInt(one -> -one.among(Facet.Kind.RULED_OUT))
          .thenComparingInt(one -> -one.changes().size())
          .thenComparingInt(one -> -one.undecided().size());

  public WhatMatters {
    data = List.copyOf(data);
  }

  /** What each open datum of a case can change. */
  public static WhatMatters of(Engine engine, Recommendation advice) {
    Map<Facet, FacetResults> results = new HashMap<>();
    List<Influence> data = new ArrayList<>();
    for (MissingDatum missing : advice.missing()) {
      data.add(new InfluenceSearch(engine, advice, missing, EFFORT, results).influence());
    }
    data.sort(MOST_FIRST);
    return new WhatMatters(advice, data);
  }

  /** Whether few enough data may matter for this to be worked out along with every answer. */
  public static boolean isQuick(Recommendation advice) {
    return advice.missing().stream().filter(MissingDatum::mayMatter).count() <= QUICK_AT_MOST;
  }

  /** The data in short, each under the weightiest that it can change. */
  public Short shortForm() {
    List<Influence> headline = new ArrayList<>();
    List<Influence> other = new ArrayList<>();
    List<Influence> undecided = new ArrayList<>();
    List<Influence> none = new ArrayList<>();
    for (Influence one : data) {
      if (one.changes().stream().anyMatch(reach -> reach.facet().isHeadline())) {
        headline.add(one);
      } else if (one.cannotMatter()) {
        none.add(one);
      } else if (!one.undecided().isEmpty()) {
        undecided.add(one);
      } else {
        other.add(one);
      }
    }
    return new Short(headline, other, undecided, none);
  }

  /**
   * The data in short.
   *
   * @param headline can change a first option or a decision of the first page
   * @param other can change rule-outs, lists or points only
   * @param undecided not shown to change a headline, and not proven to change nothing
   * @param none proven to change nothing that is shown
   */
  public record Short(
      List<Influence> headline,
      List<Influence> other,
      List<Influence> undecided,
      List<Influence> none) {
    public Short {
      headline = List.copyOf(headline);
      other = List.copyOf(other);
      undecided = List.copyOf(undecided);
      none = List.copyOf(none);
    }
  }
}
