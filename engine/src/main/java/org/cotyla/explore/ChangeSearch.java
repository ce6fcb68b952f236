package org.cotyla.explore;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explore.SmallestChange.End;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.finite.Answer;
import org.cotyla.finite.CaseSearch;
import org.cotyla.finite.Claim;
import org.cotyla.finite.Domain;
import org.cotyla.finite.Effort;
import org.cotyla.value.Truth;
import org.cotyla.value.ValueSet;

/** One search for smallest changes. Used once; not thread-safe. */
final class ChangeSearch {

  private final Engine engine;
  private final Recommendation advice;
  private final Goal goal;
  private final List<Datum> known;
  private final List<Claim> stays = new ArrayList<>();
  private final List<Claim> blocked = new ArrayList<>();
  private final CaseSearch search;

  ChangeSearch(Engine engine, Recommendation advice, Goal goal, Effort effort) {
    this.engine = engine;
    this.advice = advice;
    this.goal = goal;
    this.known =
        Dependence.fields(engine.protocol(), goal.names()).stream()
            .flatMap(field -> advice.findings().datum(field.name()).stream())
            .filter(datum -> isKnown(datum))
            .toList();
    known.forEach(datum -> stays.add(new Claim.Is(datum.field().symbol(), datum.value())));
    Domain domain =
        Domain.of(engine.protocol(), advice.findings())
            .freed(known.stream().map(Datum::field).toList());
    this.search = CaseSearch.of(engine, domain, effort);
  }

  private static boolean isKnown(Datum datum) {
    return datum.knowledge() == Knowledge.RECORDED || datum.knowledge() == Knowledge.PARTLY;
  }

  SmallestChange run(int atMost, int setsAtMost) {
    List<ChangeSet> sets = new ArrayList<>();
    End end = End.COMPLETE;
    int differ = 0;
    while (differ <= Math.min(atMost, known.size()) && end == End.COMPLETE) {
      Answer answer = search.find(wanted(differ));
      if (answer instanceof Answer.Found found) {
        List<Datum> moved = moved(found);
        sets.add(new LeastMoves(engine, advice, goal, search, known).of(moved, found));
        blocked.add(
            new Claim.Any(
                moved.stream()
                    .map(datum -> (Claim) new Claim.Is(datum.field().symbol(), datum.value()))
                    .toList()));
        end = sets.size() == setsAtMost ? End.MORE : End.COMPLETE;
        if (moved.isEmpty()) {
          // Every other way would hold this one, which asks for nothing to differ.
          return new SmallestChange(advice, goal, atMost, sets, End.COMPLETE);
        }
      } else if (answer instanceof Answer.Undecided) {
        end = End.UNDECIDED;
      } else {
        differ++;
      }
    }
    return new SmallestChange(advice, goal, atMost, sets, end);
  }

  /** The goal is reached, at most so many findings differ, and no way that is known is in it. */
  private Claim wanted(int differ) {
    List<Claim> all = new ArrayList<>(List.of(goal.claim()));
    all.add(new Claim.AtLeast(known.size() - differ, stays));
    all.addAll(blocked);
    return new Claim.All(all);
  }

  private List<Datum> moved(Answer.Found found) {
    return known.stream()
        .filter(
            datum ->
                found
                    .findings()
                    .datum(datum.field().name())
                    .filter(now -> !datum.value().containsAll(now.value()))
                    .isPresent())
        .toList();
  }

  /** Whether the goal is reached when some findings are replaced, whatever else is open. */
  static boolean reaches(
      Engine engine, Recommendation advice, Goal goal, Map<String, ValueSet> changes) {
    Recommendation after = engine.decide(Changed.with(advice.findings(), new HashMap<>(changes)));
    return goal.claim().truth(after) == Truth.TRUE;
  }
}
