package org.cotyla.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.compare.RankingComparison.FirstChange;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Answer;
import org.cotyla.finite.Claim;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Ranking;
import org.cotyla.value.PossibleValues;

/** Looks for the cases in which another option comes first. */
final class RankingSearch {

  private static final int MOST_CHANGES = 5;
  private static final String NOTHING = "nothing, every option is ruled out";

  private final Ranking before;
  private final Ranking after;

  RankingSearch(Ranking before, Ranking after) {
    this.before = before;
    this.after = after;
  }

  /** The differences that show in some of the cases, when any do. */
  Optional<RankingComparison> seenIn(List<Answer.Found> cases, Verdict votes) {
    Map<String, FirstChange> changes = new LinkedHashMap<>();
    for (Answer.Found found : cases) {
      String was = first(found.answers().get(0), before).orElse(NOTHING);
      String now = first(found.answers().get(1), after).orElse(NOTHING);
      boolean sound = found.answers().stream().allMatch(answer -> answer.faults().isEmpty());
      if (sound && !was.equals(now)) {
        changes.putIfAbsent(was + " > " + now, new FirstChange(was, now, found));
      }
    }
    List<FirstChange> some = changes.values().stream().limit(MOST_CHANGES).toList();
    return some.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new RankingComparison(
                after.name(), Verdict.DIFFERS, Verdict.DIFFERS, some, true, Optional.empty()));
  }

  /** The search; points and rule-outs are known to differ where the votes do. */
  RankingComparison run(Questions questions, Verdict votes) {
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
    Verdict first =
        !changes.isEmpty()
            ? Verdict.DIFFERS
            : note.isPresent() ? Verdict.UNDECIDED : Verdict.PROVEN_SAME;
    Verdict whole = first == Verdict.DIFFERS ? first : worse(first, votes);
    return new RankingComparison(after.name(), whole, first, changes, more, note);
  }

  private static Verdict worse(Verdict first, Verdict votes) {
    return votes.isSame() ? first : votes;
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

  private static Optional<String> first(Recommendation answer, Ranking ranking) {
    return answer
        .ranking(ranking.name())
        .flatMap(result -> result.leader())
        .map(RankedOption::name);
  }
}
