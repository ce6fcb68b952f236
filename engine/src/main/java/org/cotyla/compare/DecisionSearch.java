package org.cotyla.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finite.Answer;
import org.cotyla.finite.Claim;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;

/** Looks for the cases in which one decision gives something else, or proves that there is none. */
final class DecisionSearch {

  private static final int MOST_REGIONS = 10;
  private static final int MOST_TRIES = 6;
  private static final String FORMULAS = "some formulas could not be told apart";

  private final DecisionTable before;
  private final DecisionTable after;
  private final Side old;
  private final Side young;
  private final List<String> followsFrom;
  private final boolean edited;
  private final boolean regionsWanted;

  /**
   * @param edited whether the decision was edited itself
   * @param thorough whether all regions in which an edited decision differs are wanted; otherwise
   *     one case is enough
   */
  DecisionSearch(
      DecisionTable before,
      DecisionTable after,
      Side old,
      Side young,
      boolean edited,
      boolean thorough,
      List<String> followsFrom) {
    this.before = before;
    this.after = after;
    this.old = old;
    this.young = young;
    this.edited = edited;
    this.regionsWanted = edited && thorough;
    this.followsFrom = followsFrom;
  }

  /** A difference that shows in one of the cases, when it does. */
  Optional<DecisionComparison> seenIn(List<Answer.Found> cases) {
    Aspects aspects = TablePair.aspects(before, after, old, young);
    for (Answer.Found found : cases) {
      for (Aspect aspect : aspects.all()) {
        Optional<Difference> difference = aspect.difference(found.answers());
        if (difference.isPresent() && !givesTheSame(found.answers(), difference.get())) {
          Region region = new Region(List.of(), false, difference.get(), found);
          return Optional.of(result(List.of(region), true, Optional.empty()));
        }
      }
    }
    return Optional.empty();
  }

  DecisionComparison run(Questions questions) {
    Aspects aspects = TablePair.aspects(before, after, old, young);
    if (aspects.refusal().isPresent()) {
      return verdict(Verdict.INCOMPARABLE, aspects.refusal().get());
    }
    List<OpenAspect> open = aspects.all().stream().map(OpenAspect::new).toList();
    List<PendingRegion> regions = new ArrayList<>();
    Optional<String> note = Optional.empty();
    int misses = 0;
    boolean more = false;
    while (true) {
      Answer answer =
          questions.find(new Claim.Any(open.stream().map(OpenAspect::differs).toList()));
      if (!(answer instanceof Answer.Found found)) {
        note =
            answer instanceof Answer.Undecided undecided
                ? Optional.of(undecided.why())
                : misses > 0 ? Optional.of(FORMULAS) : Optional.empty();
        break;
      }
      Optional<Seen> seen = seen(open, found);
      if (seen.isEmpty()) {
        note = Optional.of(FORMULAS);
        break;
      }
      Difference difference = seen.get().difference();
      if (givesTheSame(found.answers(), difference)) {
        seen.get().aspect().blocked.add(difference.claim());
        misses++;
        if (misses > MOST_TRIES) {
          note = Optional.of(FORMULAS);
          break;
        }
        continue;
      }
      if (regions.size() == MOST_REGIONS) {
        more = true;
        break;
      }
      PendingRegion region = region(questions, difference, found);
      regions.add(region);
      if (!regionsWanted) {
        more = edited;
        break;
      }
      seen.get().aspect().blocked.add(region.cases());
    }
    return result(
        ReplacedEntries.merged(regions.stream().map(PendingRegion::await).toList()), more, note);
  }

  private DecisionComparison result(List<Region> regions, boolean more, Optional<String> note) {
    Verdict verdict =
        !regions.isEmpty()
            ? Verdict.DIFFERS
            : note.isPresent() ? Verdict.UNDECIDED : Verdict.PROVEN_SAME;
    Optional<Answer.Found> example =
        regionsWanted ? Optional.empty() : regions.stream().map(Region::example).findFirst();
    return new DecisionComparison(
        Optional.of(before),
        Optional.of(after),
        verdict,
        edited,
        followsFrom,
        regionsWanted ? regions : List.of(),
        more && edited,
        example,
        note);
  }

  private DecisionComparison verdict(Verdict verdict, String note) {
    return DecisionComparison.of(before, after, verdict, edited, followsFrom, Optional.of(note));
  }

  /** An aspect, and the differences in it that are known by now. */
  private static final class OpenAspect {
    private final Aspect aspect;
    private final List<Claim> blocked = new ArrayList<>();

    OpenAspect(Aspect aspect) {
      this.aspect = aspect;
    }

    Claim differs() {
      List<Claim> all = new ArrayList<>();
      all.add(aspect.differs());
      blocked.forEach(claim -> all.add(new Claim.Not(claim)));
      return new Claim.All(all);
    }
  }

  private record Seen(OpenAspect aspect, Difference difference) {}

  private static Optional<Seen> seen(List<OpenAspect> aspects, Answer.Found found) {
    return aspects.stream()
        .filter(open -> open.differs().truth(found.answers()) == Truth.TRUE)
        .flatMap(
            open -> open.aspect.difference(found.answers()).map(d -> new Seen(open, d)).stream())
        .findFirst();
  }

  /** Two formulas, or a formula and a value, can be written otherwise and give the same. */
  private boolean givesTheSame(List<Recommendation> answers, Difference difference) {
    Optional<DecisionResult> was = result(answers.get(0), before);
    Optional<DecisionResult> is = result(answers.get(1), after);
    if (was.isEmpty() || is.isEmpty() || after.votes()) {
      return false;
    }
    return switch (difference.kind()) {
      case RESULT ->
          after.hitPolicy().isSingleHit()
              && List.copyOf(was.get().outputs().values())
                  .equals(List.copyOf(is.get().outputs().values()));
      case NEW_ENTRY, GONE_ENTRY ->
          after.hitPolicy().isList() && listed(was.get()).equals(listed(is.get()));
      case ORDER -> List.copyOf(listed(was.get())).equals(List.copyOf(listed(is.get())));
      default -> false;
    };
  }

  /** What a list holds, in its order. */
  private static Set<List<PossibleValues>> listed(DecisionResult result) {
    Set<List<PossibleValues>> listed = new LinkedHashSet<>();
    result.counting().forEach(firing -> listed.add(firing.results()));
    if (result.mayBeByDefault()) {
      listed.add(result.defaultResults());
    }
    return listed;
  }

  private static Optional<DecisionResult> result(Recommendation answer, DecisionTable table) {
    return answer.decisions().stream().filter(one -> one.table() == table).findFirst();
  }

  private PendingRegion region(Questions questions, Difference difference, Answer.Found found) {
    if (!regionsWanted) {
      return new PendingRegion(
          List.of(), false, difference, CompletableFuture.completedFuture(found));
    }
    List<Input> inputs = Input.of(before, after, old, young);
    WidestBox.Found box = WidestBox.around(questions, inputs, found.answers(), difference.claim());
    List<Claim> example = new ArrayList<>();
    box.conditions().forEach(condition -> example.add(condition.claim()));
    example.add(difference.claim());
    return new PendingRegion(
        box.conditions(),
        box.whole(),
        difference,
        CompletableFuture.supplyAsync(questions.smallest(found, new Claim.All(example))));
  }
}
