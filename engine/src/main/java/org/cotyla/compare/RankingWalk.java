package org.cotyla.compare;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cotyla.compare.UnsteadyNames.Unsteady;
import org.cotyla.finite.Answer;
import org.cotyla.name.NameIndex;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Ranking;

/** Compares the rankings, each with what is known of its votes. */
final class RankingWalk {

  private final WalkState state;

  RankingWalk(WalkState state) {
    this.state = state;
  }

  void compare(Ranking ranking) {
    RankingComparison found = compared(ranking);
    state.put(ranking, found);
    if (!found.first().isSame()) {
      boolean comparable = found.first() != Verdict.INCOMPARABLE;
      state
          .unsteady()
          .mark(ranking.first().name(), new Unsteady(causes(ranking), false, comparable));
    }
  }

  /** The edits of its votes, or of what they follow from. */
  private Set<String> causes(Ranking ranking) {
    Set<String> causes = new LinkedHashSet<>();
    for (DecisionTable voter : ranking.voters()) {
      DecisionComparison found = state.comparisonOf(voter);
      if (!found.verdict().isSame()) {
        causes.addAll(found.edited() ? List.of(found.name()) : found.followsFrom());
      }
    }
    oldOf(ranking).stream()
        .flatMap(was -> was.voters().stream())
        .filter(voter -> ranking.voters().stream().noneMatch(is -> isPair(voter, is)))
        .forEach(voter -> causes.add(voter.name()));
    if (causes.isEmpty()) {
      causes.add("options of " + ranking.name());
    }
    return causes;
  }

  private boolean isPair(DecisionTable before, DecisionTable after) {
    return state.pairs().oldOf(after).filter(was -> was == before).isPresent();
  }

  private Optional<Ranking> oldOf(Ranking ranking) {
    return NameIndex.of(state.old().protocol().rankings(), Ranking::name).find(ranking.name());
  }

  private RankingComparison compared(Ranking after) {
    Optional<Ranking> was = oldOf(after);
    if (was.isEmpty()) {
      return verdict(after, Verdict.ADDED, Optional.empty());
    }
    Ranking before = was.get();
    boolean sameOptions = WrittenAlike.haveSameOptions(before, after);
    boolean sameVotes = hasSameVotes(before, after);
    if (sameOptions && sameVotes) {
      boolean searched =
          after.voters().stream()
              .anyMatch(voter -> state.comparisonOf(voter).verdict() == Verdict.PROVEN_SAME);
      state.same().addWrittenAlike(after);
      return verdict(after, searched ? Verdict.PROVEN_SAME : Verdict.SAME, Optional.empty());
    }
    if (!state.sameStages()
        || state.reached(before, after).filter(by -> !by.comparable()).isPresent()) {
      return verdict(
          after, Verdict.INCOMPARABLE, Optional.of("some of its votes cannot be compared"));
    }
    if (state.onlyEdits() && !sameVotes) {
      return verdict(after, Verdict.UNDECIDED, Optional.of(WalkState.NOT_ASKED));
    }
    RankingSearch search =
        new RankingSearch(
            before,
            after,
            sameVotes
                ? List.of()
                : VoteAspects.between(before.voters(), after.voters(), state.old(), state.young()));
    List<Answer.Found> cases = state.samples().cases();
    Optional<RankingComparison> seen = search.seenIn(cases);
    if (seen.isPresent()) {
      return seen.get();
    }
    Questions questions = state.questions(state.effortDownstream());
    RankingComparison found = search.run(questions, cases);
    if (found.first() == Verdict.UNDECIDED) {
      state.leaveOpen(after, search);
    }
    if (found.first().isSame() && questions.contradictions().isEmpty()) {
      state.same().addProven(after);
    }
    return found;
  }

  /** Whether the same sheets vote in it, and each says the state.same(). */
  private boolean hasSameVotes(Ranking before, Ranking after) {
    return before.voters().size() == after.voters().size()
        && after.voters().stream()
            .allMatch(
                is ->
                    state.comparisonOf(is).verdict().isSame()
                        && before.voters().stream().anyMatch(was -> isPair(was, is)));
  }

  private static RankingComparison verdict(
      Ranking ranking, Verdict verdict, Optional<String> note) {
    return new RankingComparison(ranking.name(), verdict, verdict, List.of(), false, note);
  }
}
