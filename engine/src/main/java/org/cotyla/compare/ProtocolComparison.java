package org.cotyla.compare;

import java.util.List;
import java.util.function.Supplier;
import org.cotyla.evaluate.Engine;
import org.cotyla.finite.Answer;
import org.cotyla.finite.Effort;
import org.cotyla.identity.ProtocolDigest;
import org.cotyla.issue.Issue;
import org.cotyla.protocol.Protocol;

/**
 * What differs in meaning between two versions of a protocol. Immutable.
 *
 * @param before the old protocol
 * @param after the new protocol
 * @param edits everything that is written otherwise
 * @param decisions every decision, in the order of the new workbook, then those that are gone
 * @param rankings every ranking of the new protocol
 * @param contradictions decisions that contradict themselves in cases that had to be left out
 * @param rowIds ids of rows that no longer mean what they meant in records of old plans: gone and
 *     not retired, or of another decision
 */
public record ProtocolComparison(
    Protocol before,
    Protocol after,
    List<Edit> edits,
    List<DecisionComparison> decisions,
    List<RankingComparison> rankings,
    List<String> contradictions,
    List<Issue> rowIds) {

  /** What is known of the whole. */
  public enum Meaning {
    /** Every decision and ranking is the same in every case: a proof. */
    SAME("the same in meaning"),
    DIFFERENT("different in meaning"),
    /** No difference was found, but not everything could be proven the same. */
    NOT_PROVEN("not proven to be the same in meaning");

    private final String words;

    Meaning(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  public ProtocolComparison {
    edits = List.copyOf(edits);
    decisions = List.copyOf(decisions);
    rankings = List.copyOf(rankings);
    contradictions = List.copyOf(contradictions);
    rowIds = List.copyOf(rowIds);
  }

  /** Compares two protocols over every case that both take. */
  public static ProtocolComparison of(Engine before, Engine after, Effort effort) {
    return of(before, after, effort, List::of);
  }

  /**
   * The same, where cases may be known by its end in which the two differ, such as past cases. What
   * follows from an edit and was not decided by the search is looked for in them.
   *
   * @param known asked for once, when the search is done and left something open: such cases, with
   *     the answers of the old and the new protocol
   */
  public static ProtocolComparison of(
      Engine before, Engine after, Effort effort, Supplier<List<Answer.Found>> known) {
    return new ComparisonWalk(
            before.remembering(), after.remembering(), effort, List.of(), known, false)
        .run();
  }

  /**
   * Looks only at the decisions that were edited themselves, and of each only for the first case in
   * which it differs. What follows from an edit is undecided here, unless the edit is proven to
   * change nothing. Where each edited decision is found to differ, or proven the same, {@link
   * #meaning} is that of {@link #of}, and found much sooner.
   *
   * @param known cases in which a difference is looked for before any search
   */
  public static ProtocolComparison ofEdits(
      Engine before, Engine after, Effort effort, List<Answer.Found> known) {
    return new ComparisonWalk(
            before.remembering(), after.remembering(), effort, known, List::of, true)
        .run();
  }

  public String digestBefore() {
    return ProtocolDigest.of(before);
  }

  public String digestAfter() {
    return ProtocolDigest.of(after);
  }

  public Meaning meaning() {
    boolean differs =
        decisions.stream().map(DecisionComparison::verdict).anyMatch(ProtocolComparison::isOther)
            || rankings.stream()
                .map(RankingComparison::verdict)
                .anyMatch(ProtocolComparison::isOther)
            || edits.stream().anyMatch(edit -> edit.kind().changesMeaning());
    if (differs) {
      return Meaning.DIFFERENT;
    }
    boolean proven =
        contradictions.isEmpty()
            && decisions.stream().allMatch(decision -> decision.verdict().isSame())
            && rankings.stream().allMatch(ranking -> ranking.verdict().isSame());
    return proven ? Meaning.SAME : Meaning.NOT_PROVEN;
  }

  private static boolean isOther(Verdict verdict) {
    return verdict == Verdict.DIFFERS || verdict == Verdict.ADDED || verdict == Verdict.REMOVED;
  }

  /** The decisions whose own table, constants or calculations say something else. */
  public List<DecisionComparison> edited() {
    return decisions.stream()
        .filter(decision -> decision.edited() && decision.verdict() != Verdict.SAME)
        .toList();
  }

  /** The decisions that an edit before them reaches. */
  public List<DecisionComparison> following() {
    return decisions.stream()
        .filter(decision -> !decision.edited() && decision.verdict() != Verdict.SAME)
        .toList();
  }
}
