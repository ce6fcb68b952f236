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
import org.cotyla.protocol.Option;
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

  /**
   * What is known of a name whose value may differ.
   *
   * @param causes the edits that reach it
   * @param directly whether a calculation between was edited, rather than a decision
   * @param comparable whether the two protocols mean the same by it
   */
  private record Unsteady(Set<String> causes, boolean directly, boolean comparable) {}

  private final Side old;
  private final Side young;
  private final Pairs pairs;
  private final Effort effort;
  private final boolean sameStages;
  private final boolean onlyEdits;
  private final Map<String, Unsteady> unsteady = new HashMap<>();
  private final Map<DecisionTable, DecisionComparison> decisions = new IdentityHashMap<>();
  private final Map<Ranking, RankingComparison> rankings = new IdentityHashMap<>();
  private final List<Questions> asked = new ArrayList<>();
  private final Samples samples;
  private final SameNames same;

  /**
   * @param onlyEdits whether it is enough to know of each edited decision that it differs, and
   *     nothing need be known of what only follows
   */
  ComparisonWalk(
      Engine before, Engine after, Effort effort, List<Answer.Found> known, boolean onlyEdits) {
    this.onlyEdits = onlyEdits;
    Map<String, ValueSet> shared = shared(before.protocol(), after.protocol());
    this.old = Side.of(0, before, shared);
    this.young = Side.of(1, after, shared);
    this.pairs = new Pairs(before.protocol(), after.protocol());
    this.effort = effort;
    this.samples = new Samples(old, young);
    this.same = new SameNames(young);
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
        List.copyOf(torn));
  }

  private void fields() {
    NameIndex<Field> before = NameIndex.of(old.protocol().fields(), Field::name);
    for (Field is : young.protocol().fields()) {
      Optional<Field> was = before.find(is.name());
      boolean alike =
          was.isEmpty()
              || (was.get().isGiven() == is.isGiven()
                  && (is.isGiven()
                      ? Domain.isAlike(was.get(), is)
                      : was.get().symbol().type() == is.symbol().type()
                          && was.get().unit().equals(is.unit())));
      if (alike && was.isPresent() && is.isGiven()) {
        same.addGiven(is);
      } else if (!alike) {
        unsteady.put(Names.key(is.name()), new Unsteady(Set.of("field " + is.name()), true, false));
      }
    }
  }

  private void calculation(Calculation is) {
    Optional<Calculation> was =
        NameIndex.of(old.protocol().calculations(), Calculation::name).find(is.name());
    if (was.isEmpty() || (was.get().constant().isPresent() && is.constant().isPresent())) {
      return;
    }
    boolean alike = old.meaning(was.get().expression()).equals(young.meaning(is.expression()));
    Optional<Unsteady> reached = reached(is.needs());
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
    unsteady.put(Names.key(is.name()), new Unsteady(causes, directly, comparable));
  }

  /** What reaches any of the names, taken together. */
  private Optional<Unsteady> reached(Set<Symbol> names) {
    Set<String> causes = new LinkedHashSet<>();
    boolean directly = false;
    boolean comparable = true;
    for (Symbol symbol : inOrder(names)) {
      Unsteady known = unsteady.get(Names.key(symbol.name()));
      if (known != null) {
        causes.addAll(known.causes());
        directly |= known.directly();
        comparable &= known.comparable();
      }
    }
    return causes.isEmpty()
        ? Optional.empty()
        : Optional.of(new Unsteady(causes, directly, comparable));
  }

  private static List<Symbol> inOrder(Set<Symbol> names) {
    return names.stream().sorted(java.util.Comparator.comparingInt(Symbol::index)).toList();
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
          .forEach(
              output ->
                  unsteady.putIfAbsent(
                      Names.key(output.name()), new Unsteady(causes, false, comparable)));
    }
  }

  private DecisionComparison decision(DecisionTable before, DecisionTable after) {
    boolean alike = CanonicalTable.of(before, old).equals(CanonicalTable.of(after, young));
    Set<Symbol> needs = new HashSet<>(after.needs());
    before.needs().forEach(symbol -> young.symbol(symbol.name()).ifPresent(needs::add));
    Optional<Unsteady> reached = reached(needs);
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
            old.unsteady(unsteady.keySet()),
            young.unsteady(unsteady.keySet()),
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
    found.regions().forEach(region -> samples.add(region.example()));
    return found;
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
      Set<String> causes = new LinkedHashSet<>();
      voters(ranking)
          .filter(voter -> !voter.verdict().isSame())
          .forEach(
              voter -> {
                if (voter.edited()) {
                  causes.add(voter.name());
                } else {
                  causes.addAll(voter.followsFrom());
                }
              });
      if (causes.isEmpty()) {
        causes.add("options of " + ranking.name());
      }
      boolean comparable = found.first() != Verdict.INCOMPARABLE;
      unsteady.put(Names.key(ranking.first().name()), new Unsteady(causes, false, comparable));
    }
  }

  private java.util.stream.Stream<DecisionComparison> voters(Ranking ranking) {
    return ranking.voters().stream()
        .flatMap(voter -> Optional.ofNullable(decisions.get(voter)).stream());
  }

  private RankingComparison compared(Ranking after) {
    Optional<Ranking> was =
        NameIndex.of(old.protocol().rankings(), Ranking::name).find(after.name());
    if (was.isEmpty()) {
      return verdict(after, Verdict.ADDED, Optional.empty());
    }
    Ranking before = was.get();
    Set<DecisionTable> gone = java.util.Collections.newSetFromMap(new IdentityHashMap<>());
    gone.addAll(pairs.removed());
    boolean lostVoter = before.voters().stream().anyMatch(gone::contains);
    boolean options = names(before).equals(names(after));
    Optional<Verdict> worst =
        voters(after)
            .map(DecisionComparison::verdict)
            .filter(verdict -> !verdict.isSame())
            .max(java.util.Comparator.naturalOrder());
    if (worst.isEmpty() && options && !lostVoter) {
      boolean searched = voters(after).anyMatch(voter -> voter.verdict() == Verdict.PROVEN_SAME);
      same.addWrittenAlike(after);
      return verdict(after, searched ? Verdict.PROVEN_SAME : Verdict.SAME, Optional.empty());
    }
    if (voters(after).anyMatch(voter -> voter.verdict() == Verdict.INCOMPARABLE)) {
      return verdict(
          after, Verdict.INCOMPARABLE, Optional.of("some of its votes cannot be compared"));
    }
    if (onlyEdits) {
      return verdict(after, Verdict.UNDECIDED, Optional.of(NOT_ASKED));
    }
    boolean sameOptions = Set.copyOf(names(before)).equals(Set.copyOf(names(after)));
    Verdict votes =
        !sameOptions || lostVoter || worst.isPresent() && worst.get() != Verdict.UNDECIDED
            ? Verdict.DIFFERS
            : worst.orElse(Verdict.SAME);
    RankingSearch search = new RankingSearch(before, after);
    Optional<RankingComparison> seen = search.seenIn(samples.cases(), votes);
    if (seen.isPresent()) {
      return seen.get();
    }
    Questions questions = questions(effortDownstream());
    RankingComparison found = search.run(questions, votes);
    if (found.first().isSame() && questions.contradictions().isEmpty()) {
      same.addProven(after);
    }
    return found;
  }

  private static List<String> names(Ranking ranking) {
    return ranking.options().stream().map(Option::name).toList();
  }

  private static RankingComparison verdict(
      Ranking ranking, Verdict verdict, Optional<String> note) {
    return new RankingComparison(ranking.name(), verdict, verdict, List.of(), false, note);
  }
}
