package org.cotyla.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.compare.Difference.Kind;
import org.cotyla.finite.Claim;

/** Takes an entry that goes and one that comes in the same cases as one region. */
final class ReplacedEntries {

  private ReplacedEntries() {}

  /** An entry that goes where another appears is one that was put in its place. */
  static List<Region> merged(List<Region> regions) {
    List<Region> merged = new ArrayList<>();
    List<Region> rest = new ArrayList<>(regions);
    while (!rest.isEmpty()) {
      Region region = rest.remove(0);
      Optional<Region> partner = rest.stream().filter(other -> areOne(region, other)).findFirst();
      partner.ifPresent(rest::remove);
      merged.add(partner.map(other -> together(region, other)).orElse(region));
    }
    return merged;
  }

  private static boolean areOne(Region one, Region other) {
    Kind kind = one.difference().kind();
    Kind opposite = other.difference().kind();
    boolean pair =
        (kind == Kind.NEW_ENTRY && opposite == Kind.GONE_ENTRY)
            || (kind == Kind.GONE_ENTRY && opposite == Kind.NEW_ENTRY);
    return pair && one.when().equals(other.when());
  }

  private static Region together(Region one, Region other) {
    boolean newFirst = one.difference().kind() == Kind.NEW_ENTRY;
    Difference gone = (newFirst ? other : one).difference();
    Difference come = (newFirst ? one : other).difference();
    Difference both =
        new Difference(
            new Claim.All(List.of(gone.claim(), come.claim())),
            Kind.OTHER_ENTRY,
            "",
            gone.was(),
            come.now());
    return new Region(one.conditions(), one.whole() && other.whole(), both, one.example());
  }
}
