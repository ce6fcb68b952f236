package org.cotyla.finite;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;

/** Single cases of the classes that a solver chose last. Not thread-safe. */
final class SingleCases {

  private final List<GivenSide> givens;
  private final List<BoxWalk> walks;
  private final CaseRuns runs;
  private final int most;

  /**
   * @param givens the findings of each side; sides may still be added
   * @param walks what is worked out on each side
   * @param most how many cases are tried
   */
  SingleCases(List<GivenSide> givens, List<BoxWalk> walks, CaseRuns runs, int most) {
    this.givens = givens;
    this.walks = walks;
    this.runs = runs;
    this.most = most;
  }

  /** One that bears the claim out: in the middle of its classes, else at random. */
  Optional<Answer.Found> ofWhich(Claim claim) {
    Map<Alternatives, PossibleValues> middles = new IdentityHashMap<>();
    int stage = givens.get(0).foundStage();
    Optional<Answer.Found> found = runs.confirmed(claim, stage, choose(Optional.empty(), middles));
    Set<Alternatives> read = readByArithmetic();
    middles.keySet().removeAll(read);
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 1; found.isEmpty() && !read.isEmpty() && i < most; i++) {
      Map<Alternatives, PossibleValues> points = new IdentityHashMap<>(middles);
      List<Map<String, PossibleValues>> chosen = choose(Optional.of(random), points);
      for (int side = 0; side < givens.size(); side++) {
        GivenSide fields = givens.get(side);
        chosen
            .get(side)
            .forEach((key, value) -> fields.seenAs(key).forEach(seen -> points.put(seen, value)));
      }
      if (walks.stream().allMatch(walk -> walk.leadsThere(points))) {
        found = runs.confirmed(claim, stage, chosen);
      }
    }
    return found;
  }

  /** Only of these does it matter which value of its class it is. */
  private Set<Alternatives> readByArithmetic() {
    Set<Alternatives> read = Collections.newSetFromMap(new IdentityHashMap<>());
    walks.forEach(walk -> read.addAll(walk.read()));
    for (GivenSide side : givens) {
      side.used()
          .forEach(
              (key, classes) -> {
                if (side.seenAs(key).stream().anyMatch(read::contains)) {
                  read.add(classes);
                }
              });
    }
    return read;
  }

  /**
   * For each side a value for every field in the class that was chosen for it: near its middle, or
   * at random. A field that sides share has one value.
   */
  private List<Map<String, PossibleValues>> choose(
      Optional<SplittableRandom> random, Map<Alternatives, PossibleValues> points) {
    List<Map<String, PossibleValues>> chosen = new ArrayList<>();
    for (GivenSide side : givens) {
      Map<String, PossibleValues> ofSide = new LinkedHashMap<>();
      side.used()
          .forEach(
              (key, classes) -> {
                PossibleValues leaf = classes.leaves().get(classes.found()).values();
                if (!leaf.isNothing()) {
                  ofSide.put(
                      key, points.computeIfAbsent(classes, shared -> point(leaf.values(), random)));
                }
              });
      chosen.add(ofSide);
    }
    return chosen;
  }

  private static PossibleValues point(ValueSet values, Optional<SplittableRandom> random) {
    Value value =
        random
            .map(dice -> Representative.sample(values, dice))
            .orElseGet(() -> Representative.of(values));
    return PossibleValues.of(value);
  }
}
