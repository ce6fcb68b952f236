package org.cotyla.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finite.Answer;
import org.cotyla.finite.CaseSearch;
import org.cotyla.finite.Claim;
import org.cotyla.finite.Domain;
import org.cotyla.finite.Effort;
import org.cotyla.value.Truth;

/**
 * Questions over every case that both protocols take. Where rows of some table contradict each
 * other a result hangs on nothing, so such cases are left out as soon as they turn up; that they
 * are is kept. Not thread-safe.
 */
final class Questions {

  private static final int MOST_EXCLUDED = 20;

  private final List<Side> sides;
  private final CaseSearch search;
  private final List<Claim> sound = new ArrayList<>();
  private final List<String> torn = new ArrayList<>();

  /**
   * @param same the keys of names that have the same value in both protocols in every case
   */
  Questions(Side old, Side young, Set<String> same, Effort effort) {
    this.sides = List.of(old, young);
    List<Engine> engines = List.of(old.engine(), young.engine());
    Domain domain = Domain.shared(engines.stream().map(Engine::protocol).toList());
    this.search = CaseSearch.of(engines, domain, same, effort);
  }

  /** A case of which the claim is true in both engines' own answers, or a proof, or neither. */
  Answer find(Claim claim) {
    for (int i = 0; i < MOST_EXCLUDED; i++) {
      Answer answer = search.find(where(claim));
      if (!(answer instanceof Answer.Found found)) {
        return answer;
      }
      if (claim.truth(found.answers()) == Truth.TRUE) {
        return answer;
      }
      if (!exclude(found.answers())) {
        return new Answer.Undecided("a case was found of which it hangs on what is left open");
      }
    }
    return new Answer.Undecided("too many tables contradict themselves");
  }

  boolean rulesOut(Claim claim) {
    return search.rulesOut(where(claim));
  }

  /**
   * The same with as few findings as bear the claim out. It is worked out when it is asked for,
   * which may be on another thread.
   */
  Supplier<Answer.Found> smallest(Answer.Found found, Claim claim) {
    Supplier<Answer.Found> smallest = search.smallestLater(found, claim);
    return () -> {
      Answer.Found fewest = smallest.get();
      // Where rows contradict each other the search lets the claim hang on what is left open.
      return claim.truth(fewest.answers()) == Truth.TRUE ? fewest : found;
    };
  }

  /** The decisions that contradict themselves in cases that were left out. */
  List<String> contradictions() {
    return List.copyOf(torn);
  }

  private Claim where(Claim claim) {
    List<Claim> all = new ArrayList<>(List.of(claim));
    all.addAll(sound);
    return new Claim.All(all);
  }

  private boolean exclude(List<Recommendation> answers) {
    boolean excluded = false;
    for (Side side : sides) {
      for (DecisionResult decision : answers.get(side.number()).decisions()) {
        if (!decision.faults().isEmpty()) {
          Optional<Claim> torn = Contradictions.of(decision.table(), side);
          torn.ifPresent(claim -> sound.add(new Claim.Not(claim)));
          this.torn.add(decision.table().name());
          excluded |= torn.isPresent();
        }
      }
    }
    return excluded;
  }
}
