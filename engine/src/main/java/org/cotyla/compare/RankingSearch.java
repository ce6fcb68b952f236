package org.cotyla.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.cotyla.compare.RankingComparison.FirstChange;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Answer;
import org.cotyla.finite.Claim;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Ranking;
import org.cotyla.value.PossibleValues;

/** Looks for the cases in which another option comes first, or an option has other points. */
final class RankingSearch {

  private static final int MOST_CHANGES = 5;
  private static final String NOTHING = "nothing, every option is ruled out";

  private final Ranking before;
  private final Ranking after;
  private final List<Aspect> votes;

  /**
   * @param votes in what the votes for the options can differ, all voters taken together
   */
  RankingSearch(Ranking before, Ranking after, List<Aspect> votes) {
    this.before = before;
    this.after = after;
    this.votes = List.copyOf(votes);
  }

  /** The differences that show in some of the cases, when any do. */
  Optional<RankingComparison> seenIn(List<Answer.Found> cases) {
    Map<String, FirstChange> changes = new LinkedHashMap<>();
    for (Answer.Found found : cases) {
      boolean sound = found.answers().stream().allMatch(answer -> answer.faults().isEmpty());
      if (sound && isCertain(found)) {
        String was = first(found.answers().get(0), before).orElse(NOTHING);
        String now = first(found.answers().get(1), after).orElse(NOTHING);
        if (!was.equals(now)) {
          changes.putIfAbsent(was + " > " + now, new FirstChange(was, now, found));
        }
      }
    }
    List<FirstChange> some = changes.values().stream().limit(MOST_CHANGES).toList();
    return some.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new RankingComparison(
                after.name(), Verdict.DIFFERS, Verdict.DIFFERS, some, true, Optional.empty()));
  }

  /** Whether the first place hangs on nothing that the case leaves open. */
  private boolean isCertain(Answer.Found found) {
    return result(found.answers().get(0), before).filter(RankingResult::firstIsCertain).isPresent()
        && result(found.answers().get(1), after).filter(RankingResult::firstIsCertain).isPresent();
  }

  /**
   * The search.
   *
   * @param cases complete cases in which a difference of the votes may show before any search
   */
  RankingComparison run(Questions questions, List<Answer.Found> cases) {
    List<FirstChange> changes = new ArrayList<>();
    List<Claim> blocked = new ArrayList<>();
    Optional<String> note = Optional.empty();
    boolean more = false;
    while (true) {
      List<Claim> all = new ArrayList<>(blocked);
      all.add(differs());
      Answer answer = questions.find(new Claim.All(all));
      if (answer instanceof Answer.Undecided undecided) {
        note = Optional.of(undecided.why());
      }
      if (!(answer instanceof Answer.Found found)) {
        break;
      }
      if (changes.size() == MOST_CHANGES) {
        more = true;
        break;
      }
      Optional<String> was = first(found.answers().get(0), before);
      Optional<String> now = first(found.answers().get(1), after);
      Claim pair = new Claim.All(List.of(isFirst(0, before, was), isFirst(1, after, now)));
      changes.add(new FirstChange(was.orElse(NOTHING), now.orElse(NOTHING), found));
      blocked.add(new Claim.Not(pair));
    }
    if (!changes.isEmpty()) {
      return new RankingComparison(
          after.name(), Verdict.DIFFERS, Verdict.DIFFERS, changes, more, note);
    }
    Verdict first = note.isPresent() ? Verdict.UNDECIDED : Verdict.PROVEN_SAME;
    Verdict points = votes(questions, cases);
    Verdict whole = points.isSame() ? first : points;
    return new RankingComparison(after.name(), whole, first, List.of(), false, note);
  }

  /** Whether every option has the same points, and is ruled out, in the same cases. */
  private Verdict votes(Questions questions, List<Answer.Found> cases) {
    if (!names(before).equals(names(after))) {
      return Verdict.DIFFERS;
    }
    boolean seen =
        votes.stream()
            .anyMatch(
                aspect ->
                    cases.stream().anyMatch(one -> aspect.difference(one.answers()).isPresent()));
    if (seen) {
      return Verdict.DIFFERS;
    }
    Answer answer = questions.find(new Claim.Any(votes.stream().map(Aspect::differs).toList()));
    if (answer instanceof Answer.Found) {
      return Verdict.DIFFERS;
    }
    return answer instanceof Answer.Impossible ? Verdict.PROVEN_SAME : Verdict.UNDECIDED;
  }

  private static Set<String> names(Ranking ranking) {
    return ranking.options().stream().map(Option::name).collect(Collectors.toSet());
  }

  private Claim differs() {
    List<Claim> ways = new ArrayList<>();
    for (Option option : before.options()) {
      ways.add(onlyBefore(Optional.of(option.name())));
    }
    ways.add(onlyBefore(Optional.empty()));
    return new Claim.Any(ways);
  }

  private Claim onlyBefore(Optional<String> option) {
    Claim is = isFirst(1, after, option);
    return new Claim.All(List.of(isFirst(0, before, option), new Claim.Not(is)));
  }

  private static Claim isFirst(int side, Ranking ranking, Optional<String> option) {
    Symbol first = ranking.first();
    if (option.isEmpty()) {
      Claim nothing = new Claim.Is(first, PossibleValues.nothing(first.type()));
      return new Claim.Of(side, nothing);
    }
    boolean known = ranking.options().stream().anyMatch(one -> one.name().equals(option.get()));
    return known
        ? new Claim.Of(side, new Claim.First(ranking, option.get()))
        : new Claim.Any(List.of());
  }

  private static Optional<RankingResult> result(Recommendation answer, Ranking ranking) {
    return answer.ranking(ranking.name());
  }

  private static Optional<String> first(Recommendation answer, Ranking ranking) {
    return result(answer, ranking).flatMap(RankingResult::leader).map(RankedOption::name);
  }
}
