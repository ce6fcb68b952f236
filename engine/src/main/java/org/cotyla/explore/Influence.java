package org.cotyla.explore;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cotyla.finding.Datum;

/**
 * A datum that is not fully known, and what it can change.
 *
 * @param datum the datum
 * @param reaches every part of the answer, the weightiest kind first, and whether it can change it
 */
public record Influence(Datum datum, List<Reach> reaches) {

  public Influence {
    reaches = List.copyOf(reaches);
  }

  /** What it can change, as two cases show that differ in nothing else. */
  public List<Reach> changes() {
    return with(Reach.Verdict.CAN).toList();
  }

  /** What could neither be shown to change nor proven not to. */
  public List<Reach> undecided() {
    return with(Reach.Verdict.UNDECIDED).toList();
  }

  /** Whether it is proven that it can change nothing that is shown. */
  public boolean cannotMatter() {
    return reaches.stream().allMatch(reach -> reach.verdict() == Reach.Verdict.CANNOT);
  }

  public Optional<Reach> reach(Facet facet) {
    return reaches.stream().filter(reach -> reach.facet().equals(facet)).findFirst();
  }

  /** The number of different results, of parts of these kinds, among which it decides. */
  int among(Facet.Kind... kinds) {
    List<Facet.Kind> wanted = List.of(kinds);
    return with(Reach.Verdict.CAN)
        .filter(reach -> wanted.contains(reach.facet().kind()))
        .mapToInt(reach -> reach.among().size())
        .sum();
  }

  private Stream<Reach> with(Reach.Verdict verdict) {
    return reaches.stream().filter(reach -> reach.verdict() == verdict);
  }
}
