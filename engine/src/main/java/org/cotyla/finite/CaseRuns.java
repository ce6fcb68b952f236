package org.cotyla.finite;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Evaluation;
import org.cotyla.evaluate.Nearby;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Findings;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;

/**
 * Runs cases of a domain with the engines that a search is put to; no solver has a part in it. Safe
 * to share between threads.
 */
final class CaseRuns {

  private final List<Engine> engines;
  private final Domain domain;

  CaseRuns(List<Engine> engines, Domain domain) {
    this.engines = List.copyOf(engines);
    this.domain = domain;
  }

  /**
   * What each engine decides.
   *
   * @param stated the findings that are stated for each engine, by the keys of their fields
   */
  Answer.Found run(int stage, List<Map<String, PossibleValues>> stated) {
    List<Recommendation> answers = new ArrayList<>();
    for (int side = 0; side < engines.size(); side++) {
      answers.add(engines.get(side).decide(findings(side, stage, stated.get(side))));
    }
    return new Answer.Found(answers.get(0).findings(), answers);
  }

  /** The case, when the engines' own answers bear the claim out. */
  Optional<Answer.Found> confirmed(
      Claim claim, int stage, List<Map<String, PossibleValues>> stated) {
    if (truth(claim, stage, stated, List.of()) == Truth.FALSE) {
      return Optional.empty();
    }
    Answer.Found found = run(stage, stated);
    return bearsOut(found.answers(), claim) ? Optional.of(found) : Optional.empty();
  }

  /** Where rows contradict each other the engine leaves either result open, as the claim may be. */
  private static boolean bearsOut(List<Recommendation> answers, Claim claim) {
    Truth truth = claim.truth(answers);
    boolean contradiction = answers.stream().anyMatch(answer -> !answer.faults().isEmpty());
    return truth == Truth.TRUE || (truth == Truth.OPEN && contradiction);
  }

  /** What is handed out says as well which data are missing; while searching nobody asks. */
  Answer.Found told(Answer.Found found) {
    List<Recommendation> answers = new ArrayList<>();
    for (int side = 0; side < engines.size(); side++) {
      answers.add(engines.get(side).evaluate(found.answers().get(side).findings()));
    }
    return new Answer.Found(answers.get(0).findings(), answers);
  }

  /** The same case with as few findings as bear the claim out, by {@link Reduction}. */
  Answer.Found smallest(Answer.Found found, Claim claim, Cone cone) {
    List<String> stages = engines.get(0).protocol().about().stages();
    int stage = stages.indexOf(found.findings().stage());
    List<Nearby> nearby = found.answers().stream().map(Nearby::of).toList();
    boolean isOpen = claim.truth(found.answers()) == Truth.OPEN;
    Reduction reduction =
        new Reduction(
            found, isOpen, cone, stated -> truth(claim, stage, stated, nearby) == Truth.TRUE);
    return told(run(stage, reduction.smallest()));
  }

  /**
   * What the claim is of a case; only what it asks is run.
   *
   * @param nearby for each engine its answer to a case that is much like this one; empty for none
   */
  private Truth truth(
      Claim claim, int stage, List<Map<String, PossibleValues>> stated, List<Nearby> nearby) {
    List<Evaluation> evaluations = new ArrayList<>();
    try {
      for (int side = 0; side < engines.size(); side++) {
        Findings findings = findings(side, stage, stated.get(side));
        evaluations.add(
            nearby.isEmpty()
                ? engines.get(side).open(findings)
                : engines.get(side).open(findings, nearby.get(side)));
      }
      return claim.holds(evaluations, 0);
    } finally {
      evaluations.forEach(Evaluation::close);
    }
  }

  private Findings findings(int side, int stage, Map<String, PossibleValues> stated) {
    return domain.findings(engines.get(side).protocol(), stage, stated);
  }
}
