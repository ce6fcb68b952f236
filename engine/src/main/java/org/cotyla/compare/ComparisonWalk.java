package org.cotyla.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.cotyla.compare.UnsteadyNames.Unsteady;
import org.cotyla.evaluate.Engine;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Answer;
import org.cotyla.finite.Domain;
import org.cotyla.finite.Effort;
import org.cotyla.name.NameIndex;
import org.cotyla.name.Names;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Step;
import org.cotyla.value.ValueSet;

/**
 * Goes through the steps of the new protocol in order of need. What says the same of names that are
 * the same needs no search; whatever else is searched, and its results are the same names again
 * once that is proven.
 */
final class ComparisonWalk {

  private static final String NOT_ASKED = "what only follows was not looked at";

  private final Side old;
  private final Side young;
  private final Pairs pairs;
  private final Effort effort;
  private final boolean sameStages;
  private final boolean onlyEdits;
  private final UnsteadyNames unsteady;
  private final Map<DecisionTable, DecisionComparison> decisions = new IdentityHashMap<>();
  private final Map<Ranking, RankingComparison> rankings = new IdentityHashMap<>();
  private final Supplier<List<Answer.Found>> knownLate;
  private final Map<DecisionTable, DecisionSearch> open = new IdentityHashMap<>();
  private final Map<Ranking, RankingSearch> openRankings = new IdentityHashMap<>();
  private final List<Questions> asked = new ArrayList<>();
  private final Samples samples;
  private final SameNames same;
  private final WrittenAlike written;

  /**
   * @param known cases that differ, in which a difference is looked for before any search
   * @param knownLate cases that differ, in which is looked for what the search left open
   * @param onlyEdits whether it is enough to know of each edited decision that it differs, and
   *     nothing need be known of what only follows
   */
  ComparisonWalk(
      Engine before,
      Engine after,
      Effort effort,
      List<Answer.Found> known,
      Supplier<List<Answer.Found>> knownLate,
      boolean onlyEdits) {
    this.knownLate = knownLate;
    this.onlyEdits = onlyEdits;
    Map<String, ValueSet> shared = shared(before.protocol(), after.protocol());
    this.old = Side.of(0, before, shared);
    this.young = Side.of(1, after, shared);
    this.pairs = new Pairs(before.protocol(), after.protocol());
    this.effort = effort;
    this.samples = new Samples(old, young);
    this.same = new SameNames(young);
    this.written = new WrittenAlike(old, young);
    this.unsteady = new UnsteadyNames(before.protocol(), after.protocol());
    known.forEach(samples::addAsItIs);
    this.sameStages = before.protocol().about().stages().equals(after.protocol().about().stages());
  }

  private static Map<String, ValueSet> shared(Protocol old, Protocol young) {
    NameIndex<Field> before = NameIndex.of(old.givenFields(), Field::name);
    Map<String, ValueSet> shared = new HashMap<>();
    for (Field is : young.givenFields()) {
      before
          .find(is.name())
          .filter(was -> Domain.isAlike(was, is))
          .ifPresent(
              was -> shared.put(Names.key(is.name()), was.allowed().intersect(is.allowed())));
    }
    return shared;
  }

  ProtocolComparison run() {
    fields();
    for (Step step : young.protocol().steps()) {
      if (step instanceof Calculation calculation) {
        calculation(calculation);
      } else if (step instanceof DecisionTable table) {
        decision(table);
      } else if (step instanceof Ranking ranking) {
        ranking(ranking);
      }
    }
    lookInLate();
    List<DecisionComparison> all = new ArrayList<>();
    young
        .protocol()
        .decisions()
        .forEach(table -> Optional.ofNullable(decisions.get(table)).ifPresent(all::add));
    pairs
        .removed()
        .forEach(was -> all.add(DecisionComparison.only(Optional.of(was), Optional.empty())));
    List<RankingComparison> ranked = new ArrayList<>();
    young
        .protocol()
        .rankings()
        .forEach(ranking -> Optional.ofNullable(rankings.get(ranking)).ifPresent(ranked::add));
    Set<String> torn = new TreeSet<>();
    asked.forEach(questions -> torn.addAll(questions.contradictions()));
    return new ProtocolComparison(
        old.protocol(),
        young.protocol(),
        Edits.between(old, young, pairs),
        all,
        ranked,
        List.copyOf(torn),
        RowIds.between(old.protocol(), young.protocol(), pairs));
  }

  /** Waits for the late cases only where the search left something open that they may show. */
  private void lookInLate() {
    if (open.isEmpty() && openRankings.isEmpty()) {
      return;
    }
    List<Answer.Found> cases = knownLate.get();
    open.forEach(
        (table, search) -> search.seenIn(cases).ifPresent(found -> decisions.put(table, found)));
    openRankings.forEach(
        (ranking, search) -> search.seenIn(cases).ifPresent(found -> rankings.put(ranking, found)));
  }

  /** What a case states, and means the same to both, has one value. */
  private void fields() {
    NameIndex<Field> before = NameIndex.of(old.protocol().givenFields(), Field::name);
    young.protocol().givenFields().stream()
        .filter(is -> before.find(is.name()).filter(was -> Domain.isAlike(was, is)).isPresent())
        .forEach(same::addGiven);
  }

  private void calculation(Calculation is) {
    Optional<Calculation> was =
        NameIndex.of(old.protocol().calculations(), Calculation::name).find(is.name());
    if (was.isEmpty() || (was.get().constant().isPresent() && is.constant().isPresent())) {
      return;
    }
    boolean alike = written.are(was.get(), is);
    Optional<Unsteady> reached = unsteady.reaching(is.needs());
    if (alike && reached.isEmpty()) {
      same.addWrittenAlike(is);
      return;
    }
    Set<String> causes = new LinkedHashSet<>();
    reached.ifPresent(by -> causes.addAll(by.causes()));
    if (!alike) {
      causes.add(is.name());
    }
    boolean comparable = reached.map(Unsteady::comparable).orElse(true);
    boolean directly = !alike || reached.map(Unsteady::directly).orElse(false);
    unsteady.mark(is.name(), new Unsteady(causes, directly, comparable));
  }

  private void decision(DecisionTable table) {
    Optional<DecisionTable> was = pairs.oldOf(table);
    DecisionComparison found =
        was.map(before -> decision(before, table))
            .orElseGet(() -> DecisionComparison.only(Optional.empty(), Optional.of(table)));
    decisions.put(table, found);
    if (!found.verdict().isSame()) {
      boolean comparable = found.verdict() != Verdict.INCOMPARABLE;
      Set<String> causes =
          found.edited() ? Set.of(table.name()) : new LinkedHashSet<>(found.followsFrom());
      table
          .gives()
          .forEach(output -> unsteady.mark(output.name(), new Unsteady(causes, false, comparable)));
    }
  }

  private DecisionComparison decision(DecisionTable before, DecisionTable after) {
    boolean alike = written.are(before, after);
    Optional<Unsteady> reached = reached(before, after);
    if (alike && reached.isEmpty() && sameStages) {
      same.addWrittenAlike(after);
      return DecisionComparison.same(before, after);
    }
    boolean edited = !alike || reached.map(Unsteady::directly).orElse(false);
    List<String> causes = reached.map(by -> List.copyOf(by.causes())).orElse(List.of());
    if (!sameStages) {
      return DecisionComparison.of(
          before,
          after,
          Verdict.INCOMPARABLE,
          edited,
          causes,
          Optional.of("the two protocols have other stages"));
    }
    if (reached.filter(by -> !by.comparable()).isPresent()) {
      return DecisionComparison.of(
          before,
          after,
          Verdict.INCOMPARABLE,
          edited,
          causes,
          Optional.of("it hangs on something that the two protocols mean otherwise"));
    }
    if (onlyEdits && !edited) {
      return DecisionComparison.of(
          before, after, Verdict.UNDECIDED, false, causes, Optional.of(NOT_ASKED));
    }
    DecisionSearch search =
        new DecisionSearch(
            before,
            after,
            old.unsteady(unsteady.keys()),
            young.unsteady(unsteady.keys()),
            edited,
            !onlyEdits,
            causes);
    Optional<DecisionComparison> seen =
        edited && !onlyEdits ? Optional.empty() : search.seenIn(samples.cases());
    if (seen.isPresent()) {
      return seen.get();
    }
    Questions questions = questions(edited ? effort : effortDownstream());
    DecisionComparison found = search.run(questions);
    boolean neverTorn =
        Contradictions.of(before, old).isEmpty() && Contradictions.of(after, young).isEmpty();
    if (found.verdict().isSame() && neverTorn && questions.contradictions().isEmpty()) {
      same.addProven(after);
    }
    if (found.verdict() == Verdict.UNDECIDED && !edited) {
      open.put(after, search);
    }
    found.regions().forEach(region -> samples.add(region.example()));
    return found;
  }

  /** What reaches anything that the step needs in either protocol. */
  private Optional<Unsteady> reached(Step before, Step after) {
    Set<Symbol> needs = new HashSet<>(after.needs());
    before.needs().forEach(symbol -> young.symbol(symbol.name()).ifPresent(needs::add));
    return unsteady.reaching(needs);
  }

  private Questions questions(Effort limit) {
    Questions questions = new Questions(old, young, same.keys(), limit);
    asked.add(questions);
    return questions;
  }

  /** What only follows is searched less long: the edit itself is what must be told apart. */
  private Effort effortDownstream() {
    return new Effort(
        Math.max(1, effort.conflicts() / 20),
        Math.max(1, effort.rounds() / 20),
        Math.max(1, effort.samples() / 4));
  }

  private void ranking(Ranking ranking) {
    RankingComparison found = compared(ranking);
    rankings.put(ranking, found);
    if (!found.first().isSame()) {
      boolean comparable = found.first() != Verdict.INCOMPARABLE;
      unsteady.mark(ranking.first().name(), new Unsteady(causes(ranking), false, comparable));
    }
  }

  /** The edits of its votes, or of what they follow from. */
  private Set<String> causes(Ranking ranking) {
    Set<String> causes = new LinkedHashSet<>();
    for (DecisionTable voter : ranking.voters()) {
      DecisionComparison found = comparisonOf(voter);
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

  private DecisionComparison comparisonOf(DecisionTable table) {
    return Optional.ofNullable(decisions.get(table)).orElseThrow();
  }

  private boolean isPair(DecisionTable before, DecisionTable after) {
    return pairs.oldOf(after).filter(was -> was == before).isPresent();
  }

  private Optional<Ranking> oldOf(Ranking ranking) {
    return NameIndex.of(old.protocol().rankings(), Ranking::name).find(ranking.name());
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
              .anyMatch(voter -> comparisonOf(voter).verdict() == Verdict.PROVEN_SAME);
      same.addWrittenAlike(after);
      return verdict(after, searched ? Verdict.PROVEN_SAME : Verdict.SAME, Optional.empty());
    }
    if (!sameStages || reached(before, after).filter(by -> !by.comparable()).isPresent()) {
      return verdict(
          after, Verdict.INCOMPARABLE, Optional.of("some of its votes cannot be compared"));
    }
    if (onlyEdits && !sameVotes) {
      return verdict(after, Verdict.UNDECIDED, Optional.of(NOT_ASKED));
    }
    RankingSearch search =
        new RankingSearch(
            before,
            after,
            sameVotes
                ? List.of()
                : VoteAspects.between(before.voters(), after.voters(), old, young));
    List<Answer.Found> cases = samples.cases();
    Optional<RankingComparison> seen = search.seenIn(cases);
    if (seen.isPresent()) {
      return seen.get();
    }
    Questions questions = questions(effortDownstream());
    RankingComparison found = search.run(questions, cases);
    if (found.first() == Verdict.UNDECIDED) {
      openRankings.put(after, search);
    }
    if (found.first().isSame() && questions.contradictions().isEmpty()) {
      same.addProven(after);
    }
    return found;
  }

  /** Whether the same sheets vote in it, and each says the same. */
  private boolean hasSameVotes(Ranking before, Ranking after) {
    return before.voters().size() == after.voters().size()
        && after.voters().stream()
            .allMatch(
                is ->
                    comparisonOf(is).verdict().isSame()
                        && before.voters().stream().anyMatch(was -> isPair(was, is)));
  }

  private static RankingComparison verdict(
      Ranking ranking, Verdict verdict, Optional<String> note) {
    return new RankingComparison(ranking.name(), verdict, verdict, List.of(), false, note);
  }
}
