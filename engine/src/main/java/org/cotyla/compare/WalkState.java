package org.cotyla.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.cotyla.compare.UnsteadyNames.Unsteady;
import org.cotyla.evaluate.Engine;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Answer;
import org.cotyla.finite.Domain;
import org.cotyla.finite.Effort;
import org.cotyla.name.NameIndex;
import org.cotyla.name.Names;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Step;
import org.cotyla.value.ValueSet;

/**
 * What a walk through two protocols knows by now: which names are the same, which are not, and what
 * each decision came to. Not thread-safe.
 */
final class WalkState {

  static final String NOT_ASKED = "what only follows was not looked at";

  private final Side old;
  private final Side young;
  private final Pairs pairs;
  private final Effort effort;
  private final boolean sameStages;
  private final boolean onlyEdits;
  private final UnsteadyNames unsteady;
  private final Map<DecisionTable, DecisionComparison> decisions = new IdentityHashMap<>();
  private final Map<Ranking, RankingComparison> rankings = new IdentityHashMap<>();
  private final Map<DecisionTable, DecisionSearch> open = new IdentityHashMap<>();
  private final Map<Ranking, RankingSearch> openRankings = new IdentityHashMap<>();
  private final List<Questions> asked = new ArrayList<>();
  private final Samples samples;
  private final SameNames same;
  private final WrittenAlike written;

  /**
   * @param known cases that differ, in which a difference is looked for before any search
   * @param onlyEdits whether it is enough to know of each edited decision that it differs, and
   *     nothing need be known of what only follows
   */
  WalkState(
      Engine before, Engine after, Effort effort, List<Answer.Found> known, boolean onlyEdits) {
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

  Side old() {
    return old;
  }

  Side young() {
    return young;
  }

  Pairs pairs() {
    return pairs;
  }

  boolean sameStages() {
    return sameStages;
  }

  boolean onlyEdits() {
    return onlyEdits;
  }

  UnsteadyNames unsteady() {
    return unsteady;
  }

  Samples samples() {
    return samples;
  }

  SameNames same() {
    return same;
  }

  WrittenAlike written() {
    return written;
  }

  /** What the decision of the new protocol came to; it was looked at before. */
  DecisionComparison comparisonOf(DecisionTable table) {
    return Optional.ofNullable(decisions.get(table)).orElseThrow();
  }

  void put(DecisionTable table, DecisionComparison found) {
    decisions.put(table, found);
  }

  void put(Ranking ranking, RankingComparison found) {
    rankings.put(ranking, found);
  }

  /** A decision that only follows, and that its search left open. */
  void leaveOpen(DecisionTable table, DecisionSearch search) {
    open.put(table, search);
  }

  /** A ranking that its search left open. */
  void leaveOpen(Ranking ranking, RankingSearch search) {
    openRankings.put(ranking, search);
  }

  boolean hasOpen() {
    return !open.isEmpty() || !openRankings.isEmpty();
  }

  /** Looks for what was left open in cases that differ. */
  void lookIn(List<Answer.Found> cases) {
    open.entrySet()
        .removeIf(
            one -> {
              Optional<DecisionComparison> found = one.getValue().seenIn(cases);
              found.ifPresent(known -> decisions.put(one.getKey(), known));
              return found.isPresent();
            });
    openRankings
        .entrySet()
        .removeIf(
            one -> {
              Optional<RankingComparison> found = one.getValue().seenIn(cases);
              found.ifPresent(known -> rankings.put(one.getKey(), known));
              return found.isPresent();
            });
  }

  /** What reaches anything that the step needs in either protocol. */
  Optional<Unsteady> reached(Step before, Step after) {
    Set<Symbol> needs = new HashSet<>(after.needs());
    before.needs().forEach(symbol -> young.symbol(symbol.name()).ifPresent(needs::add));
    return unsteady.reaching(needs);
  }

  Questions questions(Effort limit) {
    Questions questions = new Questions(old, young, same.keys(), limit);
    asked.add(questions);
    return questions;
  }

  /** What only follows is searched less long: the edit itself is what must be told apart. */
  Effort effortDownstream() {
    return new Effort(
        Math.max(1, effort.conflicts() / 20),
        Math.max(1, effort.rounds() / 8),
        Math.max(1, effort.samples() / 4));
  }

  Effort effort() {
    return effort;
  }

  ProtocolComparison comparison() {
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
}
