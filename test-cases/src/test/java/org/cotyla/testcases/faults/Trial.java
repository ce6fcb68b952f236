package org.cotyla.testcases.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.cotyla.check.ProtocolCheck;
import org.cotyla.check.Remark;
import org.cotyla.compare.DecisionComparison;
import org.cotyla.compare.ProtocolComparison;
import org.cotyla.compare.Verdict;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.FormulaLibrary;
import org.cotyla.finite.Domain;
import org.cotyla.finite.Effort;
import org.cotyla.issue.RejectedException;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.testcases.house.House;
import org.cotyla.workbook.Workbooks;

/**
 * Puts one faulty workbook to the reader, to the comparison and, where that is open, to a check.
 */
final class Trial {

  private static final Effort EFFORT = Effort.usual();
  private static final int CASES_BY_CHANCE = 40;

  private final Engine before = House.engine();
  private final KnownCases known = new KnownCases(before);
  private final PastCasesRun pastCases = new PastCasesRun(before);

  /**
   * @param told how it was told
   * @param why what the comparison says of each decision that it could not settle
   */
  record Outcome(Told told, String why) {
    static Outcome of(Told told) {
      return new Outcome(told, "");
    }
  }

  Outcome of(byte[] workbook, String fault) {
    Engine after;
    try {
      after = Engine.of(Workbooks.read("copy.xlsx", workbook, FormulaLibrary.installed()));
    } catch (RejectedException refused) {
      assertThat(refused.issues()).as(fault).isNotEmpty();
      return Outcome.of(Told.REFUSED);
    }
    pastCases.agree(after, fault);
    ProtocolComparison comparison =
        ProtocolComparison.ofEdits(before, after, EFFORT, known.differing(after));
    Optional<DecisionComparison> differing =
        comparison.edited().stream()
            .filter(decision -> decision.verdict() == Verdict.DIFFERS)
            .findFirst();
    if (differing.isPresent()) {
      bearsOut(differing.get(), fault);
      return Outcome.of(Told.BY_A_CASE);
    }
    if (comparison.meaning() == ProtocolComparison.Meaning.SAME) {
      agree(after, fault);
      return Outcome.of(Told.NO_CHANGE);
    }
    if (hasNewRemark(after, comparison)) {
      return Outcome.of(Told.BY_A_REMARK);
    }
    return comparison.meaning() == ProtocolComparison.Meaning.DIFFERENT
        ? Outcome.of(Told.BY_THE_FIELD)
        : new Outcome(Told.MISSED, open(comparison));
  }

  /** The two engines, run on the case that was found, must themselves give two answers. */
  private static void bearsOut(DecisionComparison decision, String fault) {
    List<Recommendation> answers = decision.example().orElseThrow().answers();
    assertThat(Results.of(answers.get(0), decision.before().orElseThrow()))
        .as("%s: %s", fault, decision.name())
        .isNotEqualTo(Results.of(answers.get(1), decision.after().orElseThrow()));
  }

  /** What was proven the same must be the same in cases that chance picks. */
  private void agree(Engine after, String fault) {
    Domain domain = Domain.shared(List.of(before.protocol(), after.protocol()));
    for (int i = 0; i < CASES_BY_CHANCE; i++) {
      Recommendation was =
          before.evaluate(domain.sample(before.protocol(), new SplittableRandom(i)));
      Recommendation is = after.evaluate(domain.sample(after.protocol(), new SplittableRandom(i)));
      for (DecisionResult decision : is.decisions()) {
        DecisionTable old = was.decision(decision.table().name()).orElseThrow().table();
        assertThat(Results.of(is, decision.table()))
            .as("%s: %s", fault, old.name())
            .isEqualTo(Results.of(was, old));
      }
    }
  }

  private static String open(ProtocolComparison comparison) {
    return comparison.decisions().stream()
            .filter(decision -> !decision.verdict().isSame())
            .map(one -> one.name() + " " + one.verdict().word() + " " + one.note().orElse(""))
            .toList()
        + " "
        + comparison.contradictions();
  }

  private boolean hasNewRemark(Engine after, ProtocolComparison comparison) {
    List<DecisionComparison> edited = comparison.edited();
    Set<String> known = new HashSet<>();
    remarks(before, edited.stream().flatMap(one -> one.before().stream()).toList())
        .forEach(remark -> known.add(remark.issue().code() + remark.issue().message()));
    return remarks(after, edited.stream().flatMap(one -> one.after().stream()).toList()).stream()
        .anyMatch(remark -> !known.contains(remark.issue().code() + remark.issue().message()));
  }

  private static List<Remark> remarks(Engine engine, List<DecisionTable> tables) {
    return ProtocolCheck.of(engine, EFFORT).tables(tables);
  }
}
