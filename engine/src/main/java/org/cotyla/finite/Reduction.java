package org.cotyla.finite;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Findings;
import org.cotyla.name.Names;
import org.cotyla.value.PossibleValues;

/** Takes findings away, first many at once, and at last each that is left by itself. */
final class Reduction {

  private final Predicate<List<Map<String, PossibleValues>>> bearsOut;
  private final boolean isOpen;
  private final Cone cone;
  private List<Map<String, PossibleValues>> stated;

  /**
   * @param found a case that bears the claim out
   * @param isOpen whether it does so only as far as it leaves the claim open
   * @param cone what the claim can hang on
   * @param bearsOut whether the claim is true of the case, by the findings that are stated for each
   *     protocol
   */
  Reduction(
      Answer.Found found,
      boolean isOpen,
      Cone cone,
      Predicate<List<Map<String, PossibleValues>>> bearsOut) {
    this.stated = found.answers().stream().map(answer -> single(answer.findings())).toList();
    this.isOpen = isOpen;
    this.cone = cone;
    this.bearsOut = bearsOut;
  }

  /** The findings that are left, by the keys of their fields, for each protocol. */
  List<Map<String, PossibleValues>> smallest() {
    Set<String> alike = new LinkedHashSet<>();
    stated.forEach(side -> alike.addAll(side.keySet()));
    alike.removeIf(
        key ->
            stated.stream().map(side -> side.get(key)).filter(Objects::nonNull).distinct().count()
                > 1);
    List<String> keys = new ArrayList<>(alike);
    Collections.reverse(keys);
    takeAway(keys);
    for (String key : keys) {
      if (stated.stream().anyMatch(side -> side.containsKey(key))) {
        without(List.of(key));
      }
    }
    return stated;
  }

  private void takeAway(List<String> keys) {
    if (keys.size() > 1 && !without(keys)) {
      int half = keys.size() / 2;
      takeAway(keys.subList(0, half));
      takeAway(keys.subList(half, keys.size()));
    }
  }

  private boolean without(List<String> keys) {
    List<Map<String, PossibleValues>> fewer = new ArrayList<>();
    for (Map<String, PossibleValues> side : stated) {
      Map<String, PossibleValues> less = new LinkedHashMap<>(side);
      less.keySet().removeAll(keys);
      fewer.add(less);
    }
    boolean same = isOpen ? keys.stream().noneMatch(cone::hangsOn) : bearsOut.test(fewer);
    if (same) {
      stated = fewer;
    }
    return same;
  }

  private static Map<String, PossibleValues> single(Findings findings) {
    Map<String, PossibleValues> single = new LinkedHashMap<>();
    for (Datum datum : findings.data()) {
      if (datum.value().single().isPresent()) {
        single.put(Names.key(datum.field().name()), datum.value());
      }
    }
    return single;
  }
}
